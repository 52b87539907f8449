import {
  type DeepPoint,
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type Point,
  type Unit,
} from "../../units/index.js";
import { distanceFromLine, type Line } from "./line.js";

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
