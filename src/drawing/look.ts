import type { Theme } from "./palette.js";

/** What every picture can be told. */
export interface Look {
  /** Default `"light"`. */
  readonly theme?: Theme;
  /** Name of the picture, for readers and for programs that read pictures aloud. */
  readonly title?: string;
}
