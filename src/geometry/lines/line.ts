import {
  type FlatPoint,
  flatPoint,
  type Length,
  length,
  type Point,
  type Unit,
} from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { advance, difference, type Vector } from "./vector.js";

/** A direction in the plane: a pair of length 1, without a unit. */
export type Direction = Vector;

/** An endless directed line through a point. */
export interface Line<U extends Unit> {
  readonly through: FlatPoint<U>;
  readonly direction: Direction;
}

/**
 * The line from one point through another; depth is ignored.
 *
 * @throws GeometryError `coincident-points` where the points do not give a direction
 *
 * @example
 * ```ts
 * import { lineThrough } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * lineThrough(mm([0, 0]), mm([30, 40])).direction; // → [0.6, 0.8]
 * ```
 */
export function lineThrough<U extends Unit>(from: Point<U>, to: Point<U>): Line<U> {
  const [x, y] = difference(to, from);
  const size = Math.hypot(x, y);
  if (size === 0) {
    refuse("coincident-points", "lineThrough", "to", to, "a point that differs from `from`");
  }
  return { through: flatPoint(from[0], from[1]), direction: [x / size, y / size] };
}

/**
 * The line through a point that runs along a direction, which need not have length 1.
 *
 * @throws GeometryError `out-of-range` where the direction is zero or not finite
 *
 * @example
 * ```ts
 * import { lineAlong } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * lineAlong(mm([15.7, 0]), [0, 2]).direction; // → [0, 1]
 * ```
 */
export function lineAlong<U extends Unit>(through: Point<U>, direction: Direction): Line<U> {
  const size = Math.hypot(direction[0], direction[1]);
  if (!(size > 0 && Number.isFinite(size))) {
    const need = "two finite numbers that are not both 0";
    refuse("out-of-range", "lineAlong", "direction", direction, need);
  }
  return {
    through: flatPoint(through[0], through[1]),
    direction: [direction[0] / size, direction[1] / size],
  };
}

/**
 * The point of a line at a distance from its `through` point, negative against its direction.
 *
 * @example
 * ```ts
 * import { lineThrough, pointOnLine } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * pointOnLine(lineThrough(mm([0, 0]), mm([3, 4])), mm(10)); // → [6, 8]
 * ```
 */
export function pointOnLine<U extends Unit>(line: Line<U>, at: Length<U>): FlatPoint<U> {
  const [x, y] = advance(line.through, line.direction, at);
  return flatPoint(x, y);
}

/**
 * How far along a line the foot of a point's perpendicular lies, from the line's `through` point.
 *
 * @example
 * ```ts
 * import { distanceAlongLine, lineThrough } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * distanceAlongLine(mm([5, 7]), lineThrough(mm([0, 0]), mm([1, 0]))); // → 5
 * ```
 */
export function distanceAlongLine<U extends Unit>(point: Point<U>, line: Line<U>): Length<U> {
  const [x, y] = difference(point, line.through);
  return length(line.direction[0] * x + line.direction[1] * y);
}

/**
 * Signed distance of a point from a line: positive on the side to which the direction turns when
 * the x axis turns towards the y axis (left of it in the face space, right of it in the photo).
 *
 * @example
 * ```ts
 * import { distanceFromLine, lineThrough } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * distanceFromLine(mm([5, 7]), lineThrough(mm([0, 0]), mm([1, 0]))); // → 7
 * ```
 */
export function distanceFromLine<U extends Unit>(point: Point<U>, line: Line<U>): Length<U> {
  const [x, y] = difference(point, line.through);
  return length(line.direction[0] * y - line.direction[1] * x);
}
