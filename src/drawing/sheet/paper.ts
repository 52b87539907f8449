import { requireWithin, requireWord } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { type Brush, brushOf } from "../canvas/brush.js";
import { type Look, requireLook } from "../canvas/look.js";
import { uprightView } from "../canvas/view.js";

/** Sheets of paper: A4 (ISO 216) and US letter. */
export type Paper = "A4" | "letter";

/** Their sizes in millimetres, upright. */
export const PAPERS: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> =
  { A4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } };

/** What printers leave white, and a little more, in millimetres. */
export const PAPER_MARGIN = 12;

/** How a document to print is drawn. */
export interface PaperDrawing extends Look {
  /** Default `"A4"`. */
  readonly paper?: Paper;
  /** The smallest type on paper, in points, from 6 to 14. Default 8. */
  readonly leastType?: number;
  /** The nonce of a page's Content-Security-Policy, for the document's one style element. Default: none. */
  readonly nonce?: string;
}

/** What a document on paper is drawn with. */
export interface Print {
  readonly paper: Paper;
  /** The smallest type, which the running text has, in points. */
  readonly leastType: number;
  readonly nonce: string | undefined;
  readonly words: Words;
  /** Draws in millimetres on paper. */
  readonly brush: Brush;
  /** How wide what is printed may be, in millimetres. */
  readonly width: number;
}

/** Millimetres to a point. */
const POINT = 25.4 / 72;

/** On A4 and light by default, after checks of what the caller asked for; `others` are options besides. */
export function printOf<Given extends PaperDrawing>(
  options: Given,
  others: readonly (keyof Given & string)[] = [],
): Print {
  requireLook(options, ["paper", "leastType", "nonce", ...others]);
  const { paper = "A4", leastType = 8, nonce } = options;
  requireWord("paper", paper, Object.keys(PAPERS));
  requireWithin("leastType", leastType, 6, 14);
  const brush = brushOf(uprightView([0, 0], 1, leastType * POINT), options);
  const width = PAPERS[paper].width - 2 * PAPER_MARGIN;
  return { paper, leastType, nonce, words: brush.words, brush, width };
}
