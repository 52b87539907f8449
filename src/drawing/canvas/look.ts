import { requireWord } from "../../units/internal.js";
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

export function requireLook(where: string, { theme }: Look): void {
  requireWord(where, "theme", theme, Object.keys(PALETTES));
}
