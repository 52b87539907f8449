import type { Point, Unit } from "../../units/index.js";

/**
 * The dots an artist places on one brow: three on the upper border, three on the lower; the upper
 * dot above the body is where the reading of its thickness begins.
 */
export type Dot =
  "upperStart" | "upperBody" | "upperArch" | "tailEnd" | "lowerStart" | "lowerBody" | "lowerArch";

/** All dots, in the order in which they are drawn: along the upper border, then the lower. */
export const DOTS: readonly Dot[] = [
  "upperStart",
  "upperBody",
  "upperArch",
  "tailEnd",
  "lowerStart",
  "lowerBody",
  "lowerArch",
];

/** The dots of one brow that are known: natural brows may lack an arch or a lower border. */
export type BrowDots<U extends Unit> = { readonly [Name in Dot]?: Point<U> };

/** The dots of one brow, none missing. */
export type CompleteDots<U extends Unit> = Required<BrowDots<U>>;
