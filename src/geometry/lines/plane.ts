import { type DeepPoint, deepPoint, type Length, length, type Unit } from "../../units/index.js";
import { dotProduct, spaceAdvance, spaceDifference, type SpaceVector } from "./space-vector.js";

/** A plane in space: a point of it, and what stands on it. */
export interface Plane<U extends Unit> {
  readonly through: DeepPoint<U>;
  /** Of length 1. */
  readonly normal: SpaceVector;
}

/**
 * Signed distance of a point from a plane: positive on the side to which the normal points.
 *
 * @example
 * ```ts
 * import { distanceFromPlane } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * distanceFromPlane(mm([5, 7, 9]), { through: mm([0, 0, 2]), normal: [0, 0, 1] }); // → 7
 * ```
 */
export function distanceFromPlane<U extends Unit>(point: DeepPoint<U>, plane: Plane<U>): Length<U> {
  return length(dotProduct(spaceDifference(point, plane.through), plane.normal));
}

/**
 * The point of a plane that is nearest to a point.
 *
 * @example
 * ```ts
 * import { footOnPlane } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * footOnPlane(mm([5, 7, 9]), { through: mm([0, 0, 2]), normal: [0, 0, 1] }); // → [5, 7, 2]
 * ```
 */
export function footOnPlane<U extends Unit>(point: DeepPoint<U>, plane: Plane<U>): DeepPoint<U> {
  const [x, y, z] = spaceAdvance(point, plane.normal, -distanceFromPlane(point, plane));
  return deepPoint(x, y, z);
}
