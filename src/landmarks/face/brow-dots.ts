import type { Point, Unit } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";

/**
 * The dots of one brow, in the order in which they are drawn: along the upper border, then the lower.
 * Those `placed` are what an artist draws, while the upper dot above the body lies on the border between its
 * neighbours, where the reading of its thickness begins; pictures show it, too.
 */
export const DOTS = {
  upperStart: { station: "start", placed: true, border: "upper" },
  upperBody: { station: "body", placed: false, border: "upper" },
  upperArch: { station: "arch", placed: true, border: "upper" },
  tailEnd: { station: "tail", placed: true, border: "upper" },
  lowerStart: { station: "start", placed: true, border: "lower" },
  lowerBody: { station: "body", placed: true, border: "lower" },
  lowerArch: { station: "arch", placed: true, border: "lower" },
} as const;

/** Name of a dot of one brow: three on the upper border, three on the lower, and the tail end. */
export type Dot = keyof typeof DOTS;

/** All dots, in their order. */
export const DOT_NAMES: readonly Dot[] = /* @__PURE__ */ keysOf(DOTS);

/** The dots that an artist draws, in their order. */
export const PLACED_DOTS: readonly Dot[] = /* @__PURE__ */ DOT_NAMES.filter(
  (dot) => DOTS[dot].placed,
);

/** The dots of one brow that are known: natural brows may lack an arch or a lower border. */
export type BrowDots<U extends Unit> = { readonly [Name in Dot]?: Point<U> };

/** The dots of one brow, none missing. */
export type CompleteDots<U extends Unit> = Required<BrowDots<U>>;
