import { type Length, length, type Point, type Polyline, type Unit } from "../../units/index.js";
import { requirePositive } from "../../units/internal.js";
import { densify, distanceFromLeg, type Leg, legsOf, polylineLength } from "./polyline.js";
import { distance } from "../lines/distance.js";
import { hausdorffDistance } from "./hausdorff-distance.js";

/** How far two lines run apart. */
export interface Separation<U extends Unit> {
  /** Mean distance of the points of either line from the other, by length. */
  readonly mean: Length<U>;
  /** Hausdorff distance: how far the point of either line that is farthest from the other lies from it. */
  readonly greatest: Length<U>;
}

/** How {@link separation} works. */
export interface SeparationOptions<U extends Unit> {
  /**
   * The mean is read at points no farther apart than this, and is off by a quarter of it at most; the
   * greatest distance does not depend on it. Default: a two-hundredth of the longer line.
   */
  readonly step?: Length<U>;
}

/** Pieces into which the longer line is cut where nothing else is said. */
const PIECES = 200;

/**
 * Mean and greatest distance between two polylines, each way. The greatest is exact, to 1e-12 of the
 * largest coordinate; the mean is read densely. Their directions do not matter, depth is ignored.
 *
 * @throws GeometryError as {@link densify}
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { separation } from "brow-geometry/geometry";
 * separation(mm([[0, 0], [40, 0]]), mm([[0, 2], [20, 4], [40, 2]])); // → { mean: 3.0, greatest: 4 }
 * ```
 */
export function separation<U extends Unit>(
  one: Polyline<U>,
  other: Polyline<U>,
  options: SeparationOptions<U> = {},
): Separation<U> {
  const step =
    options.step ?? length<U>(Math.max(polylineLength(one), polylineLength(other)) / PIECES);
  const [legs, otherLegs] = [legsOf("separation", one), legsOf("separation", other)];
  requirePositive("separation", "step", step);
  const there = sumsAlong(densify(one, step), otherLegs);
  const back = sumsAlong(densify(other, step), legs);
  return {
    mean: length((there.integral + back.integral) / (there.size + back.size)),
    greatest: length(hausdorffDistance(legs, otherLegs)),
  };
}

/**
 * Distance of a point from the nearest point of a polyline; depth is ignored.
 *
 * @throws GeometryError as {@link pointAlong}
 *
 * @example
 * ```ts
 * import { distanceFromPolyline } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * distanceFromPolyline(mm([5, 4]), mm([[0, 0], [10, 0]])); // → 4
 * distanceFromPolyline(mm([13, 4]), mm([[0, 0], [10, 0]])); // → 5
 * ```
 */
export function distanceFromPolyline<U extends Unit>(
  point: Point<U>,
  polyline: Polyline<U>,
): Length<U> {
  return length(leastDistance(point, legsOf("distanceFromPolyline", polyline)));
}

function leastDistance<U extends Unit>(point: Point<U>, legs: readonly Leg<U>[]): number {
  return legs.reduce((least, leg) => Math.min(least, distanceFromLeg(point, leg)), Infinity);
}

/** Integral of the distance along a line by the trapezium rule, and the line's length. */
function sumsAlong<U extends Unit>(
  points: Polyline<U>,
  legs: readonly Leg<U>[],
): { readonly integral: number; readonly size: number } {
  let [integral, size, last] = [0, 0, 0];
  let before: Point<U> | undefined;
  for (const point of points) {
    const apart = leastDistance(point, legs);
    if (before !== undefined) {
      const piece = distance(before, point);
      integral += (piece * (last + apart)) / 2;
      size += piece;
    }
    [before, last] = [point, apart];
  }
  return { integral, size };
}
