import { vec2 } from "gl-matrix";
import { hasDepth, type Length, length, type Point, type Unit } from "../../units/index.js";
import { spaceDifference } from "./space-vector.js";

/**
 * Distance of two points in the plane; depth is ignored.
 *
 * @example
 * ```ts
 * import { distance } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * distance(mm([0, 0]), mm([3, 4])); // → 5
 * ```
 */
export function distance<U extends Unit>(from: Point<U>, to: Point<U>): Length<U> {
  return length(vec2.distance(from, to));
}

/**
 * Distance of two points in space, or in the plane where one of them has no depth.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { spaceDistance } from "brow-geometry/geometry";
 * spaceDistance(mm([0, 0, 0]), mm([2, 3, 6])); // → 7
 * ```
 */
export function spaceDistance<U extends Unit>(from: Point<U>, to: Point<U>): Length<U> {
  if (!hasDepth(from) || !hasDepth(to)) return distance(from, to);
  const [x, y, z] = spaceDifference(to, from);
  return length(Math.sqrt(x * x + y * y + z * z));
}
