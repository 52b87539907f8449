import { vec3 } from "gl-matrix";

/** Three plain numbers without a unit. */
export type SpaceVector = readonly [x: number, y: number, z: number];

/** A vector, or a point with depth. */
type SpaceCoordinates = readonly [x: number, y: number, z: number];

// As for pairs: results are written into a fresh triple of plain numbers.

export function spaceDifference(of: SpaceCoordinates, from: SpaceCoordinates): SpaceVector {
  const out: [number, number, number] = [0, 0, 0];
  vec3.subtract(out, of, from);
  return out;
}

export function spaceAdvance(
  from: SpaceCoordinates,
  direction: SpaceVector,
  by: number,
): SpaceVector {
  const out: [number, number, number] = [0, 0, 0];
  vec3.scaleAndAdd(out, from, direction, by);
  return out;
}

export function dotProduct(one: SpaceVector, other: SpaceVector): number {
  return vec3.dot(one, other);
}
