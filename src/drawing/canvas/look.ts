import { requireObject, requireWord } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { PALETTES, type Theme } from "./palette.js";

/** Options that every picture has. */
export interface Look {
  /** Default `"light"`. */
  readonly theme?: Theme;
  /** Name of the picture, for readers and for programs that read pictures aloud. */
  readonly title?: string;
  /** In which words it is labelled; default English. */
  readonly words?: Words;
}

export function requireLook(look: Look): void {
  requireObject("options", look, "an object, or to be left out");
  requireWord("theme", look.theme, Object.keys(PALETTES));
}
