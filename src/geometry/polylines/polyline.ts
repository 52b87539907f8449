import {
  type FlatPoint,
  flatPoint,
  type Length,
  length,
  type Point,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { refusingAs, refuse, requirePolyline, requirePositive } from "../../units/internal.js";
import { distance } from "../lines/distance.js";
import { between } from "../lines/vector.js";

/**
 * Length of a polyline in the plane. A point drawn twice adds nothing.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { polylineLength } from "brow-geometry/geometry";
 * polylineLength(mm([[0, 0], [3, 4], [3, 4], [3, 10]])); // → 11
 * ```
 */
export function polylineLength<U extends Unit>(polyline: Polyline<U>): Length<U> {
  let sum = 0;
  polyline.forEach((to, index) => {
    const from = polyline[index - 1];
    if (from !== undefined) sum += distance(from, to);
  });
  return length(sum);
}

/** A place on a polyline. `extended` where it lies beyond an end, on the end's tangent. */
export interface PolylinePlace<U extends Unit> {
  readonly at: FlatPoint<U>;
  /** Distance from the first point along the polyline; negative before it. */
  readonly along: Length<U>;
  readonly extended: boolean;
}

/**
 * The place at a distance from a polyline's first point, measured along it. Beyond an end it lies
 * on the end's tangent and is flagged.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points` where no two points differ
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { pointAlong } from "brow-geometry/geometry";
 * pointAlong(mm([[0, 0], [10, 0]]), mm(4)); // → { at: [4, 0], along: 4, extended: false }
 * pointAlong(mm([[0, 0], [10, 0]]), mm(12)); // → { at: [12, 0], along: 12, extended: true }
 * ```
 */
export function pointAlong<U extends Unit>(
  polyline: Polyline<U>,
  along: Length<U>,
): PolylinePlace<U> {
  return refusingAs("pointAlong", () => {
    const legs = legsOf(polyline);
    const last = legs[legs.length - 1] as Leg<U>;
    const leg = legs.find(({ before, size }) => along <= before + size) ?? last;
    return placeOnLeg(leg, (along - leg.before) / leg.size, last);
  });
}

/** One segment of a polyline that has a length. */
export interface Leg<U extends Unit> {
  readonly from: Point<U>;
  readonly to: Point<U>;
  readonly size: number;
  /** Way along the polyline to `from`. */
  readonly before: number;
}

/** The segments that have a length, in order: points drawn twice drop out here, once for all. */
export function legsOf<U extends Unit>(polyline: Polyline<U>): readonly Leg<U>[] {
  requirePolyline("polyline", polyline, 2);
  const legs: Leg<U>[] = [];
  let before = 0;
  for (let index = 1; index < polyline.length; index += 1) {
    const [from, to] = [polyline[index - 1] as Point<U>, polyline[index] as Point<U>];
    const size = distance(from, to);
    if (size === 0) continue;
    legs.push({ from, to, size, before });
    before += size;
  }
  if (legs.length === 0) {
    refuse("coincident-points", "polyline", polyline, "two points that differ");
  }
  return legs;
}

/** Distance of a point from the nearest point of a leg. */
export function distanceFromLeg<U extends Unit>(
  point: Point<U>,
  { from, to, size }: Leg<U>,
): number {
  // Without pairs of its own: whole borders are read millions of times through here.
  const legX = to[0] - from[0];
  const legY = to[1] - from[1];
  const offX = point[0] - from[0];
  const offY = point[1] - from[1];
  const share = Math.min(Math.max((offX * legX + offY * legY) / (size * size), 0), 1);
  const x = offX - share * legX;
  const y = offY - share * legY;
  return Math.sqrt(x * x + y * y);
}

/** The place at a share of a leg; before the first leg and after the last it is extended. */
export function placeOnLeg<U extends Unit>(
  leg: Leg<U>,
  share: number,
  last: Leg<U>,
): PolylinePlace<U> {
  const [x, y] = between(leg.from, leg.to, share);
  const along = leg.before + share * leg.size;
  const whole = last.before + last.size;
  return {
    at: flatPoint(x, y),
    along: length(along),
    extended: along < -ROUNDING * whole || along > (1 + ROUNDING) * whole,
  };
}

/** A polyline's own length, summed up, may round past its last point. */
const ROUNDING = 1e-12;

/**
 * A polyline over the same way with more points, none farther than `step` from the next; its own
 * points stay, repeated neighbours drop out.
 *
 * @throws GeometryError `out-of-range` where the step is not more than 0, and what
 * {@link pointAlong} throws
 *
 * @example
 * ```ts
 * import { densify } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * densify(mm([[0, 0], [10, 0], [10, 3]]), mm(4)); // → [[0, 0], [3.33, 0], [6.67, 0], [10, 0], [10, 3]]
 * ```
 */
export function densify<U extends Unit>(
  polyline: Polyline<U>,
  step: Length<U>,
): readonly FlatPoint<U>[] {
  return refusingAs("densify", () => {
    requirePositive("step", step);
    const legs = legsOf(polyline);
    const [first] = polyline;
    const points: FlatPoint<U>[] = first === undefined ? [] : [flatPoint(first[0], first[1])];
    for (const { from, to, size } of legs) {
      const pieces = Math.ceil(size / step);
      for (let piece = 1; piece <= pieces; piece += 1) {
        const [x, y] = between(from, to, piece / pieces);
        points.push(flatPoint(x, y));
      }
    }
    return points;
  });
}

/**
 * Signed area of the polygon through points, closed from the last to the first, in square units:
 * positive where it is run through from the x axis towards the y axis (counter-clockwise in the
 * face space, clockwise in the photo).
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { polygonArea } from "brow-geometry/geometry";
 * polygonArea(mm([[0, 0], [4, 0], [4, 3]])); // → 6
 * polygonArea(mm([[0, 0], [4, 3], [4, 0]])); // → -6
 * ```
 */
export function polygonArea<U extends Unit>(points: Polyline<U>): number {
  const [originX, originY] = points[0] ?? [0, 0];
  let twice = 0;
  let [beforeX, beforeY] = [0, 0];
  for (const point of points) {
    const [x, y] = [point[0] - originX, point[1] - originY];
    twice += beforeX * y - beforeY * x;
    [beforeX, beforeY] = [x, y];
  }
  return twice / 2;
}
