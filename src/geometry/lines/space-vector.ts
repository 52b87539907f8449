/** Three plain numbers without a unit: a vector, or a point with depth. */
export type SpaceVector = readonly [x: number, y: number, z: number];

// Not by gl-matrix: its space vectors would weigh more than all that reads them here.

export function spaceDifference(of: SpaceVector, from: SpaceVector): SpaceVector {
  return [of[0] - from[0], of[1] - from[1], of[2] - from[2]];
}

export function spaceAdvance(from: SpaceVector, along: SpaceVector, by: number): SpaceVector {
  return [from[0] + along[0] * by, from[1] + along[1] * by, from[2] + along[2] * by];
}

export function dotProduct(one: SpaceVector, other: SpaceVector): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}
