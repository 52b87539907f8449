import { deepPoint, flatPoint, hasDepth, type Point, type Unit } from "../../units/index.js";
import { between } from "./vector.js";

/**
 * The point half-way between two, with depth where both have it.
 *
 * @example
 * ```ts
 * import { midpoint } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * midpoint(mm([-16, 0]), mm([15, 2])); // → [-0.5, 1]
 * ```
 */
export function midpoint<U extends Unit>(one: Point<U>, other: Point<U>): Point<U> {
  const [x, y] = between(one, other, 0.5);
  return hasDepth(one) && hasDepth(other)
    ? deepPoint(x, y, (one[2] + other[2]) / 2)
    : flatPoint(x, y);
}
