import {
  type FlatPoint,
  flatPoint,
  GeometryError,
  type Length,
  length,
  type Point,
  type Polyline,
  requirePolyline,
  type Unit,
} from "../units/index.js";
import { distance } from "./distance.js";
import type { Direction } from "./line.js";
import { advance } from "./vector.js";

/**
 * Length of a polyline in the plane. A point drawn twice adds nothing.
 *
 * @example
 * ```ts
 * import { mm, polylineLength } from "brow-geometry";
 * polylineLength(mm([[0, 0], [3, 4], [3, 4], [3, 10]])); // → 11
 * ```
 */
export function polylineLength<U extends Unit>(polyline: Polyline<U>): Length<U> {
  let sum = 0;
  for (const [from, to] of segments(polyline)) sum += distance(from, to);
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
 * import { mm, pointAlong } from "brow-geometry";
 * pointAlong(mm([[0, 0], [10, 0]]), mm(4)); // → { at: [4, 0], along: 4, extended: false }
 * pointAlong(mm([[0, 0], [10, 0]]), mm(12)); // → { at: [12, 0], along: 12, extended: true }
 * ```
 */
export function pointAlong<U extends Unit>(
  polyline: Polyline<U>,
  along: Length<U>,
): PolylinePlace<U> {
  const legs = directedSegments("pointAlong", polyline);
  const last = legs[legs.length - 1] as Leg<U>;
  const leg = legs.find(({ from, size }) => along <= from + size) ?? last;
  const [x, y] = advance(leg.start, leg.direction, along - leg.from);
  return { at: flatPoint(x, y), along, extended: along < 0 || along > last.from + last.size };
}

/** One segment of a polyline with its place along the whole. */
export interface Leg<U extends Unit> {
  readonly start: Point<U>;
  readonly direction: Direction;
  readonly size: number;
  /** Distance of `start` from the polyline's first point, along it. */
  readonly from: number;
}

/** The segments that have a length, in order; repeated neighbours drop out here, once for all. */
export function directedSegments<U extends Unit>(
  where: string,
  polyline: Polyline<U>,
): readonly Leg<U>[] {
  requirePolyline(where, "polyline", polyline, 2);
  const legs: Leg<U>[] = [];
  let from = 0;
  for (const [start, end] of segments(polyline)) {
    const size = distance(start, end);
    if (size === 0) continue;
    legs.push({
      start,
      direction: [(end[0] - start[0]) / size, (end[1] - start[1]) / size],
      size,
      from,
    });
    from += size;
  }
  if (legs.length === 0) {
    throw new GeometryError("coincident-points", {
      where,
      field: "polyline",
      value: polyline,
      need: "two points that differ",
    });
  }
  return legs;
}

function* segments<U extends Unit>(polyline: Polyline<U>): Generator<[Point<U>, Point<U>]> {
  let previous: Point<U> | undefined;
  for (const point of polyline) {
    if (previous !== undefined) yield [previous, point];
    previous = point;
  }
}
