import {
  flatPoint,
  type Length,
  length,
  type Point,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { refusingAs, requirePositive } from "../../units/internal.js";
import { densify, distanceFromLeg, type Leg, legsOf, polylineLength } from "./polyline.js";
import { distance } from "../lines/distance.js";
import { between } from "../lines/vector.js";

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
  return refusingAs("separation", () => {
    const step =
      options.step ?? length<U>(Math.max(polylineLength(one), polylineLength(other)) / PIECES);
    const [legs, otherLegs] = [legsOf(one), legsOf(other)];
    requirePositive("step", step);
    const there = sumsAlong(densify(one, step), otherLegs);
    const back = sumsAlong(densify(other, step), legs);
    return {
      mean: length((there.integral + back.integral) / (there.size + back.size)),
      greatest: length(hausdorffDistance(legs, otherLegs)),
    };
  });
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
  return refusingAs("distanceFromPolyline", () => {
    return length(leastDistance(point, legsOf(polyline)));
  });
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

/** To what share of the largest coordinate the distance is exact: far above what rounding costs. */
const EXACTNESS = 1e-12;

/**
 * How far the point of either polyline that is farthest from the other lies from it.
 *
 * The farthest point need not be a vertex: it may lie where another leg becomes the nearest. Stretches
 * of a line are halved until none can hold a farther point than the one found (branch and bound).
 */
function hausdorffDistance<U extends Unit>(
  one: readonly Leg<U>[],
  other: readonly Leg<U>[],
): number {
  const all = [...one, ...other].flatMap(({ from, to }) => [from[0], from[1], to[0], to[1]]);
  const slack = EXACTNESS * all.reduce((most, at) => Math.max(most, Math.abs(at)), 0);
  return farthest(other, one, farthest(one, other, 0, slack), slack);
}

/** The greatest distance of a point of one line from the other, or what was found already. */
function farthest<U extends Unit>(
  line: readonly Leg<U>[],
  legs: readonly Leg<U>[],
  found: number,
  slack: number,
): number {
  const away = (point: Point<U>): readonly number[] =>
    legs.map((leg) => distanceFromLeg(point, leg));
  const atEnds = line.map(({ to }) => away(to));
  const starts = [away((line[0] as Leg<U>).from), ...atEnds];
  // Vertices first: the farther the farthest of them, the fewer stretches are left to halve.
  const atVertices = starts.reduce((most, distances) => Math.max(most, least(distances)), found);
  return line.reduce(
    (most, { from, to, size }, index) =>
      farthestWithin(
        { from, to, size, legs, atFrom: starts[index] ?? [], atTo: atEnds[index] ?? [] },
        most,
        slack,
      ),
    atVertices,
  );
}

/** A stretch of a line, and how far its ends lie from each leg of the other that may be nearest. */
interface Stretch<U extends Unit> {
  readonly from: Point<U>;
  readonly to: Point<U>;
  readonly size: number;
  readonly legs: readonly Leg<U>[];
  readonly atFrom: readonly number[];
  readonly atTo: readonly number[];
}

function farthestWithin<U extends Unit>(
  { from, to, size, legs, atFrom, atTo }: Stretch<U>,
  found: number,
  slack: number,
): number {
  // Along a straight line the distance from a leg is convex: nowhere more than at one of the ends.
  const bound = least(legs.map((_, leg) => Math.max(atFrom[leg] as number, atTo[leg] as number)));
  if (bound <= found + slack) return found;
  // A leg that is farther than the bound all the way is never the nearest.
  const near = legs.flatMap((_, leg) =>
    ((atFrom[leg] as number) + (atTo[leg] as number) - size) / 2 <= bound ? [leg] : [],
  );
  const middle = flatPoint<U>(...between(from, to, 0.5));
  const nearLegs = near.map((leg) => legs[leg] as Leg<U>);
  const atMiddle = nearLegs.map((leg) => distanceFromLeg(middle, leg));
  const half = { size: size / 2, legs: nearLegs };
  const nearFrom = near.map((leg) => atFrom[leg] as number);
  const nearTo = near.map((leg) => atTo[leg] as number);
  const first = { ...half, from, to: middle, atFrom: nearFrom, atTo: atMiddle };
  const second = { ...half, from: middle, to, atFrom: atMiddle, atTo: nearTo };
  const atLeast = Math.max(found, least(atMiddle));
  return farthestWithin(second, farthestWithin(first, atLeast, slack), slack);
}

function least(numbers: readonly number[]): number {
  return numbers.reduce((smallest, number) => Math.min(smallest, number), Infinity);
}
