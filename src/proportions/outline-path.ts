import { type Cubic } from "../geometry/index.js";
import { flatten, mapPathWithin, pathArea, reversePath } from "../geometry/internal.js";
import type { Brow } from "../landmarks/index.js";
import {
  type FlatPoint,
  flatPoint,
  type Length,
  length,
  type Point,
  type Unit,
} from "../units/index.js";
import { refusingAs } from "../units/internal.js";
import type { Outline } from "./outline.js";

/**
 * An outline as one closed path, run through so that its area is positive: counter-clockwise in the
 * face space on either side.
 *
 * @example
 * ```ts
 * import { completeDots, outlinePath } from "brow-geometry/proportions";
 * import { mm, outline } from "brow-geometry";
 * import { pathData } from "brow-geometry/geometry";
 * const upper = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };
 * const path = outlinePath(outline(completeDots(upper)));
 * path.length; // → 6
 * pathData(path, 0).slice(0, 24); // → "M15 12C20 14 25 16 30 17"
 * ```
 */
export function outlinePath<U extends Unit>(outline: Outline<U>): readonly Cubic<U>[] {
  const { upper, tail, lower, front } = outline;
  const path = [...lower, ...reversePath(tail), ...reversePath(upper), ...reversePath(front)];
  return pathArea(path) < 0 ? reversePath(path) : path;
}

/**
 * Area within an outline, exact, in square units of its space.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { naturalOutline, outlineArea } from "brow-geometry/proportions";
 * const brow = { upper: mm([[15, 20], [60, 20]]), lower: mm([[15, 12], [60, 20]]) };
 * outlineArea(naturalOutline(brow)); // → 180
 * ```
 */
export function outlineArea<U extends Unit>(outline: Outline<U>): number {
  return pathArea(outlinePath(outline));
}

/**
 * The borders of an outline as polylines that stray from it by no more than the stated error, each
 * from start to tail end: what a brow is wherever borders are asked for.
 *
 * @throws GeometryError `not-finite`, `out-of-range` where the error is not positive
 *
 * @example
 * ```ts
 * import { completeDots, thickness } from "brow-geometry/proportions";
 * import { mm, outline } from "brow-geometry";
 * import { outlineBorders } from "brow-geometry/proportions";
 * const upper = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };
 * const brow = outlineBorders(outline(completeDots(upper)), mm(0.001));
 * thickness(mm([45, 26]), brow)?.value; // → 6.000
 * ```
 */
export function outlineBorders<U extends Unit>(
  outline: Outline<U>,
  error: Length<U>,
): Required<Brow<U>> {
  return refusingAs("outlineBorders", () => ({
    upper: flatten(outline.upper, error),
    lower: flatten(outline.lower, error),
  }));
}

/**
 * An outline under a map, from the face to the photo for example: exact but for rounding where the map
 * keeps straight lines straight and even. Where it bends them, as the frame of a turned head does, the
 * curves stray from the true image by no more than `error`, 0.01 px or mm where nothing else is said.
 *
 * @throws GeometryError `not-finite`, `out-of-range` where the error is not positive
 */
export function mapOutline<From extends Unit, To extends Unit>(
  outline: Outline<From>,
  map: (point: FlatPoint<From>) => Point<To>,
  error: Length<To> = length(0.01),
): Outline<To> {
  const flat = (point: FlatPoint<From>): FlatPoint<To> => {
    const [x, y] = map(point);
    return flatPoint(x, y);
  };
  const mapped = (path: readonly Cubic<From>[]): readonly Cubic<To>[] =>
    mapPathWithin(path, flat, error);
  return {
    upper: mapped(outline.upper),
    tail: mapped(outline.tail),
    lower: mapped(outline.lower),
    front: mapped(outline.front),
  };
}
