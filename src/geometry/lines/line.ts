import {
  type DeepPoint,
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type Length,
  length,
  type Point,
  type Unit,
} from "../../units/index.js";
import { refusingAs, refuse } from "../../units/internal.js";
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
  return refusingAs("lineThrough", () => lineBetween(from, to));
}

/** {@link lineThrough}, asked for by another function, of a field of its own. */
export function lineBetween<U extends Unit>(from: Point<U>, to: Point<U>, field = "to"): Line<U> {
  const [x, y] = difference(to, from);
  const size = Math.hypot(x, y);
  if (size === 0) {
    refuse("coincident-points", field, to, "another point");
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
  return refusingAs("lineAlong", () => {
    const size = Math.hypot(direction[0], direction[1]);
    if (!(size > 0 && Number.isFinite(size))) {
      const need = "two finite numbers that are not both 0";
      refuse("out-of-range", "direction", direction, need);
    }
    return {
      through: flatPoint(through[0], through[1]),
      direction: [direction[0] / size, direction[1] / size],
    };
  });
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
  // Without a pair of its own, like the distance below: lines are met tens of thousands of times a plan.
  const { through, direction } = line;
  return length(direction[0] * (point[0] - through[0]) + direction[1] * (point[1] - through[1]));
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
  const { through, direction } = line;
  return length(direction[0] * (point[1] - through[1]) - direction[1] * (point[0] - through[0]));
}

/**
 * The mirror image of a point across a line; depth stays as it is.
 *
 * @example
 * ```ts
 * import { lineThrough, reflectAcross } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * reflectAcross(mm([3, 1]), lineThrough(mm([0, 0]), mm([1, 2]))); // → [-1.000, 3.000]
 * ```
 */
export function reflectAcross<U extends Unit>(point: FlatPoint<U>, across: Line<U>): FlatPoint<U>;
export function reflectAcross<U extends Unit>(point: DeepPoint<U>, across: Line<U>): DeepPoint<U>;
export function reflectAcross<U extends Unit>(point: Point<U>, across: Line<U>): Point<U>;
export function reflectAcross<U extends Unit>(point: Point<U>, across: Line<U>): Point<U> {
  const twice = 2 * distanceFromLine(point, across);
  const x = point[0] + twice * across.direction[1];
  const y = point[1] - twice * across.direction[0];
  return hasDepth(point) ? deepPoint(x, y, point[2]) : flatPoint(x, y);
}

/** How two endless lines meet: in one point, nowhere, or everywhere. */
export type LineMeeting<U extends Unit> =
  | { readonly kind: "crossing"; readonly at: FlatPoint<U> }
  | { readonly kind: "parallel"; readonly apart: Length<U> }
  | { readonly kind: "coincident" };

/**
 * What rounding may do to a sine, or to a distance as a share of the coordinates: below it two
 * directions count as parallel, and two parallel lines as one.
 */
const ROUNDING = 1e-12;

/**
 * Where two endless lines meet. Parallel and coincident lines are ordinary answers.
 *
 * @example
 * ```ts
 * import { intersect, lineThrough } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * const level = lineThrough(mm([0, 12]), mm([1, 12]));
 * const tailGuide = lineThrough(mm([15.7, -38]), mm([43.9, 0]));
 * intersect(level, tailGuide); // → { kind: "crossing", at: [52.81, 12.00] }
 * ```
 */
export function intersect<U extends Unit>(one: Line<U>, other: Line<U>): LineMeeting<U> {
  const sine = one.direction[0] * other.direction[1] - one.direction[1] * other.direction[0];
  if (Math.abs(sine) < ROUNDING) {
    const apart = Math.abs(distanceFromLine(other.through, one));
    const reach = Math.hypot(...one.through, ...other.through);
    return apart <= ROUNDING * reach
      ? { kind: "coincident" }
      : { kind: "parallel", apart: length(apart) };
  }
  const [x, y] = difference(other.through, one.through);
  const along = (x * other.direction[1] - y * other.direction[0]) / sine;
  return { kind: "crossing", at: pointOnLine(one, length(along)) };
}
