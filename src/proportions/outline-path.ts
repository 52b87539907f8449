import type { Cubic } from "../geometry/index.js";
import {
  flatten,
  mapPathWithin,
  overlapWith,
  pathArea,
  reversePath,
} from "../geometry/internal.js";
import type { Brow } from "../landmarks/index.js";
import {
  flatPoint,
  type FlatPoint,
  length,
  type Length,
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
 * An outline under a map, such as that from the face to the photo: exact where straight lines stay
 * straight and even; else within `error`, 0.01 px or mm where nothing else is said.
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

/** How a planned brow lies over the natural one, in square millimetres of the frontal view. */
export interface OutlineOverlap {
  readonly shared: number;
  /** Natural hair outside the plan: to be removed. */
  readonly hairOutside: number;
  /** Bare skin inside the plan: to be filled. */
  readonly skinInside: number;
}

/**
 * Compares a planned outline with the natural one by area: exactly where each lies between two borders
 * that are graphs over x, as brows do. Where one turns back, such as a bulging front edge, its curves
 * are read as polylines that stray from them by no more than `error`, 0.001 mm where nothing else is
 * said, which leaves the areas of a brow right to about 0.1 mm².
 *
 * @throws GeometryError `not-finite`, `out-of-range` where the error is not positive
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { naturalOutline, overlapOutlines } from "brow-geometry/proportions";
 * const brow = { upper: mm([[15, 20], [60, 20]]), lower: mm([[15, 12], [60, 16]]) };
 * const moved = { upper: mm([[15, 21], [60, 21]]), lower: mm([[15, 13], [60, 17]]) };
 * overlapOutlines(naturalOutline(moved), naturalOutline(brow));
 * // → { shared: 225.000, hairOutside: 45.000, skinInside: 45.000 }
 * ```
 */
export function overlapOutlines(
  planned: Outline<"mm">,
  natural: Outline<"mm">,
  error?: Length<"mm">,
): OutlineOverlap {
  return refusingAs("overlapOutlines", () => overlapOver(natural, error)(planned));
}

/** {@link overlapOutlines} of one natural outline with many planned ones. */
export function overlapOver(
  natural: Outline<"mm">,
  error: Length<"mm"> = length(0.001),
): (planned: Outline<"mm">) => OutlineOverlap {
  const grown = outlinePath(natural);
  const overlap = overlapWith(grown, error);
  const area = pathArea(grown);
  return (planned) => {
    const path = outlinePath(planned);
    const shared = overlap(path);
    return { shared, hairOutside: area - shared, skinInside: pathArea(path) - shared };
  };
}
