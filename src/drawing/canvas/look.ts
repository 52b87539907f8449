import { requireWord } from "../../units/internal.js";
import { PALETTES, type Theme } from "./palette.js";

/** Options that every picture has. */
export interface Look {
  /** Default `"light"`. */
  readonly theme?: Theme;
  /** Name of the picture, for readers and for programs that read pictures aloud. */
  readonly title?: string;
}

export function requireLook(where: string, { theme }: Look): void {
  requireWord(where, "theme", theme, Object.keys(PALETTES));
}
