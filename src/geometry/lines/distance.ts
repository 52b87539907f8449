import { vec2 } from "gl-matrix";
import { hasDepth, type Length, length, type Point, type Unit } from "../../units/index.js";

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
  // Not by gl-matrix: its space vectors would be in the bundle of every plan for this one sum.
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  return length(Math.sqrt(x * x + y * y + z * z));
}
