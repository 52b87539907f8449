import { keysOf, refusingAs, requireNames } from "../units/internal.js";
import type { Cubic } from "../geometry/index.js";
import { cubicsOf, mapPath, straightCubic } from "../geometry/internal.js";
import { flatPoint, type Unit } from "../units/index.js";
import { type BrowCurves, browCurves, type OutlineDots } from "./brow-curves.js";
import { type OutlineOptions, SHAPES } from "./outline-shape.js";

/** The edge of a brow as exact curves. Its four parts join end to end. */
export interface Outline<U extends Unit> {
  /** From the upper corner of the front, the upper start dot where it is square, to the tail end. */
  readonly upper: readonly Cubic<U>[];
  /** From the end of the upper border to the end of the lower one; empty where they meet in a point. */
  readonly tail: readonly Cubic<U>[];
  /** From the lower corner of the front, the lower start dot where it is square, to the tail end. */
  readonly lower: readonly Cubic<U>[];
  /** From the lower corner of the front to the upper one; never nearer to the midline than the start line. */
  readonly front: readonly Cubic<U>[];
}

/**
 * The outline of a brow through its dots, in the face space.
 *
 * Both borders are graphs over the distance from the midline, so that the outline is exact cubics
 * and never crosses itself. The upper border is two cubic pieces that meet at the arch, with their
 * highest point there where the arch lies above both ends; a body dot that was moved off it is one
 * more knot of the front. The lower border is the upper one less a
 * shape-preserving curve (PCHIP) of vertical thickness through the lower dots, down to nothing at
 * the tail end. A flat brow is drawn by the same rule.
 *
 * @throws GeometryError `not-finite`; `inconsistent` where the dots of a border do not follow each
 * other outwards, where the upper body is not between start and arch in height, where a lower dot is not below the upper border, or where a border crosses the
 * front edge; `out-of-range` where an option is; each naming the field
 *
 * @example
 * ```ts
 * import { mm, outline } from "brow-geometry";
 * const { upper, lower } = outline({
 *   upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]),
 *   lowerStart: mm([15, 12]), lowerBody: mm([30, 17.5]), lowerArch: mm([45, 20]),
 * });
 * upper.length; // → 2
 * lower.map(([, , , to]) => to); // → [[30, 17.5], [45, 20], [60, 18]]
 * ```
 */
export function outline(dots: OutlineDots, options: OutlineOptions = {}): Outline<"mm"> {
  return refusingAs("outline", () => {
    requireNames("options", options, keysOf(SHAPES));
    return outlineOfCurves(browCurves(dots, options), options);
  });
}

/** The outline that the curves of a brow make, drawn with these options. */
export function outlineOfCurves(
  { outwards, seen: { upper, lower }, front }: BrowCurves,
  options: OutlineOptions,
): Outline<"mm"> {
  const { frontRoundness = 0, softFront = 0 } = options;
  const edge = frontRoundness + softFront === 0 ? straightCubic(front[0], front[3]) : front;
  const onSide = (path: readonly Cubic<"mm">[]): readonly Cubic<"mm">[] =>
    mapPath(path, ([x, y]) => flatPoint(outwards * x, y));
  return {
    upper: onSide(cubicsOf(upper)),
    tail: [],
    lower: onSide(cubicsOf(lower)),
    front: onSide([edge]),
  };
}
