import { vec2 } from "gl-matrix";

/** A pair of plain numbers without a unit. */
export type Vector = readonly [x: number, y: number];

/** Anything whose first two elements are coordinates: a vector, a point with or without depth. */
type Coordinates = Vector | readonly [x: number, y: number, depth: number];

// gl-matrix's own constructors give Float32Arrays, and it overwrites whatever it is handed as `out`:
// results are written into a fresh pair of plain numbers, here and nowhere else.

export function difference(of: Coordinates, from: Coordinates): Vector {
  const out: [number, number] = [0, 0];
  vec2.subtract(out, of, from);
  return out;
}

export function advance(from: Coordinates, direction: Vector, by: number): Vector {
  const out: [number, number] = [0, 0];
  vec2.scaleAndAdd(out, from, direction, by);
  return out;
}

export function between(from: Coordinates, to: Coordinates, share: number): Vector {
  const out: [number, number] = [0, 0];
  vec2.lerp(out, from, to, share);
  return out;
}
