import { requireWord } from "../../units/index.js";
import { PALETTES, type Theme } from "./palette.js";

/** What every picture can be told. */
export interface Look {
  /** Default `"light"`. */
  readonly theme?: Theme;
  /** Name of the picture, for readers and for programs that read pictures aloud. */
  readonly title?: string;
}

/** Refuses a theme that there is not. */
export function requireLook(where: string, { theme }: Look): void {
  requireWord(where, "theme", theme, Object.keys(PALETTES));
}
