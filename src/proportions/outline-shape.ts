import type { Length } from "../units/index.js";
import { keysOf, requireWithin } from "../units/internal.js";

/** How the upper border of a drawn brow is shaped between its dots. */
export interface UpperBorderShape {
  /** 0: the arch is round; 1: it is a corner between two straight flanks. Default 0.3, ours. */
  readonly angularity?: number;
  /**
   * Slope at the start, in slopes of the chord from start to arch: 1 leaves along the chord, 0 level,
   * 3 is the steepest that keeps the border from running past its dots. Default: as a parabola has
   * it, 2 less the arch's. On the way to a body dot off the border it is never steeper than three
   * slopes of the chord to that.
   */
  readonly startSlope?: number;
  /** Slope at the tail end, in slopes of the chord from arch to tail end; otherwise the same. */
  readonly tailSlope?: number;
}

/** How an outline is shaped between its dots. */
export interface OutlineOptions extends UpperBorderShape {
  /**
   * How round the front edge is, in half thicknesses: 0 is square, 1 nearly half a circle. Its corners are set
   * back by so much, and it touches the start line between them. Default 0: the start line is the brow's edge.
   */
  readonly frontRoundness?: number;
  /**
   * A soft front: how far its upper corner is set back from the start line besides, along the border, in mm, 0…6
   * (ours). The lower corner stays on the start line. Default 0.
   */
  readonly softFront?: Length<"mm">;
}

/** The steepest slope of a cubic that only rises, in slopes of its chord (Fritsch & Carlson 1980). */
export const STEEPEST = 3;

/** What shapes an outline, each from 0 to how much. */
export const SHAPES: { readonly [Name in keyof OutlineOptions]-?: number } = {
  angularity: 1,
  startSlope: STEEPEST,
  tailSlope: STEEPEST,
  frontRoundness: 1,
  softFront: 6,
};

const SHAPE_NAMES = /* @__PURE__ */ keysOf(SHAPES);

/** Refuses a shape out of its range, by the name under which it was given. */
export function requireShape(given: string, shape: OutlineOptions): void {
  for (const name of SHAPE_NAMES) {
    const value = shape[name];
    if (value !== undefined) requireWithin(`${given}.${name}`, value, 0, SHAPES[name]);
  }
}
