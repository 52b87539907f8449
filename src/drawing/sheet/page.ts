import { refuse, requireWord } from "../../units/internal.js";
import { decimal, isolatedNumber, label } from "../../words/internal.js";
import { type Block, drawnBlocks, heightOf, paginated } from "./block.js";
import { brushOf } from "../canvas/brush.js";
import { type Look, requireLook } from "../canvas/look.js";
import { uprightView } from "../canvas/view.js";
import { textAt } from "../canvas/label-layer.js";
import { element, pictureSource, type SvgElement } from "../canvas/svg.js";
import { type Paper, PAPER_MARGIN, PAPERS } from "./paper.js";
import { inwards, PAPER_TYPE, type Sheet } from "./text-blocks.js";

export interface Document {
  readonly paper: Paper;
  readonly title: string;
  readonly description: string;
  readonly blocks: readonly Block[];
  /** Height of the foot of every page, beneath the room of the blocks. */
  readonly footHeight: number;
  /** What stands there besides the number of the page, from a height on. */
  readonly foot?: (top: number) => readonly SvgElement[];
  /** From the top of the foot to the number. */
  readonly numberDown: number;
}

export function roomOn(paper: Paper, footHeight: number): number {
  return PAPERS[paper].height - 2 * PAPER_MARGIN - footHeight;
}

/** Pages as SVGs of their paper's size, a unit a millimetre on paper. */
export function pagesOf(document: Document, sheet: Sheet): readonly string[] {
  const { brush } = sheet;
  const { paper, title, description, blocks, footHeight, foot = () => [], numberDown } = document;
  const { palette } = brush;
  const size = PAPERS[paper];
  const room = roomOn(paper, footHeight);
  const top = PAPER_MARGIN + room;
  const pages = paginated(blocks, room);
  return pages.map((page, index) => {
    const [number, of] = [index + 1, pages.length];
    const corner = { x: inwards(PAPER_MARGIN, sheet)(sheet.width), side: "end" } as const;
    const look = { size: PAPER_TYPE.small, colour: palette.quiet };
    return pictureSource(
      {
        width: `${size.width}mm`,
        height: `${size.height}mm`,
        viewBox: `0 0 ${size.width} ${size.height}`,
      },
      label(brush.words, "page", { title, number, of }),
      description,
      brush.words,
      [
        // Browsers otherwise add margins of their own, and shrink the sheet or cut it in two.
        element("style", {}, [`@page{size:${size.width}mm ${size.height}mm;margin:0}`]),
        element("rect", { ...size, fill: palette.backdrop }),
        ...drawnBlocks(page, PAPER_MARGIN, PAPER_MARGIN),
        ...foot(top),
        textAt(
          isolatedNumber(
            [number, of].map((one) => decimal(one, 0, brush.words)).join(" / "),
            brush.words,
          ),
          corner,
          top + numberDown,
          look,
          brush,
        ),
      ],
    );
  });
}

/** The most that a caller's own text may take of the first page, in millimetres. */
const LONGEST_TEXT = 60;

/** Refuses a caller's own text that would fill the first page. */
export function requireShort(field: string, blocks: readonly Block[], value: unknown): void {
  if (heightOf(blocks) <= LONGEST_TEXT) return;
  const need = `text short enough for ${LONGEST_TEXT} mm of the first page`;
  refuse("out-of-range", field, value, need);
}

/** The room of pages, after checks of what the caller asked for; on A4 and light by default. */
export function sheetOn(options: Look & { readonly paper?: Paper }): {
  readonly paper: Paper;
  readonly sheet: Sheet;
} {
  requireLook(options);
  const { paper = "A4" } = options;
  requireWord("paper", paper, Object.keys(PAPERS));
  const brush = brushOf(uprightView([0, 0]), options);
  return { paper, sheet: { width: PAPERS[paper].width - 2 * PAPER_MARGIN, brush } };
}
