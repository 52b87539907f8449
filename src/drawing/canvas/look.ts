import { requireNames, requireWithin, requireWord } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { PALETTES, type Theme } from "./palette.js";

/** About the least that is read without effort, in CSS pixels (from memory). */
const LEAST_TYPE = 11;

/** Of the smallest letters: in a narrower picture little but letters would be left. */
const NARROWEST = 15;

/** Options that every picture has. */
export interface Look {
  /** Default `"light"`. */
  readonly theme?: Theme;
  /** Name of the picture, for readers and for programs that read pictures aloud. */
  readonly title?: string;
  /** In which words it is labelled; default English. */
  readonly words?: Words;
}

/** How a picture is drawn that is shown on a screen. */
export interface ScreenDrawing extends Look {
  /** Letters, and the room for them, grow until they are legible there. Default: a picture for some 600 CSS pixels. */
  readonly screen?: Screen;
}

/** Where a picture is shown. */
export interface Screen {
  /** How wide it is shown, in CSS pixels: from 15 times its smallest letters to 10,000. */
  readonly width: number;
  /** The smallest letters, in CSS pixels, from 6 to 24. Default 11. */
  readonly leastType?: number;
}

/** Refuses a look that cannot be; `others` are its options besides those of every picture. */
export function requireLook<Given extends ScreenDrawing>(
  look: Given,
  others: readonly (keyof Given & string)[] = ["screen"],
): void {
  requireNames("options", look, ["theme", "title", "words", ...others]);
  requireWord("theme", look.theme, Object.keys(PALETTES));
  if (look.screen === undefined) return;
  requireNames("screen", look.screen, ["width", "leastType"]);
  const { width, leastType = LEAST_TYPE } = look.screen;
  requireWithin("screen.leastType", leastType, 6, 24);
  requireWithin("screen.width", width, NARROWEST * leastType, 10_000);
}

/** Picture units of the smallest letters in a picture that is so wide. */
export function leastOn(width: number, { screen }: ScreenDrawing): number {
  return screen === undefined ? 0 : ((screen.leastType ?? LEAST_TYPE) * width) / screen.width;
}
