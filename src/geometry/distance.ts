import { vec2, vec3 } from "gl-matrix";
import { hasDepth, type Length, length, type Point, type Unit } from "../units/index.js";

/**
 * Distance of two points in the plane; depth is ignored.
 *
 * @example
 * ```ts
 * import { distance, mm } from "brow-geometry";
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
 * import { mm, spaceDistance } from "brow-geometry";
 * spaceDistance(mm([0, 0, 0]), mm([2, 3, 6])); // → 7
 * ```
 */
export function spaceDistance<U extends Unit>(from: Point<U>, to: Point<U>): Length<U> {
  return hasDepth(from) && hasDepth(to) ? length(vec3.distance(from, to)) : distance(from, to);
}
