import type { DeepPoint, GeometryErrorCode, Length, Point, Unit } from "../../units/index.js";
import {
  refuse,
  requireFinitePoint,
  requirePositive,
  requireUncertainty,
} from "../../units/internal.js";

/**
 * A point of a roughly symmetric figure or body together with its partner on the other side; without
 * `other` the point belongs on the line or plane of symmetry and is its own partner.
 */
export interface MirrorPair<U extends Unit, Place extends Point<U> = Point<U>> {
  readonly one: Place;
  readonly other?: Place;
  /** How much it counts before its place is judged, more than 0; with `other` it counts twice. */
  readonly weight: number;
  /** How far each coordinate of its points is usually off symmetry, more than 0. */
  readonly spread: Length<U>;
  /** Standard uncertainty of each coordinate of its points; default: the spread. */
  readonly u?: Length<U>;
}

/** A {@link MirrorPair} of points with depth. */
export type DeepMirrorPair<U extends Unit> = MirrorPair<U, DeepPoint<U>>;

/** Under this many pairs all are kept: of six, two in error cannot be told from the rest. */
export const ROBUST_PAIRS = 7;

export function requirePairs<U extends Unit>(pairs: readonly MirrorPair<U>[]): void {
  pairs.forEach(({ one, other, weight, spread, u }, index) => {
    requireFinitePoint(`pairs[${index}].one`, one);
    if (other !== undefined) requireFinitePoint(`pairs[${index}].other`, other);
    requirePositive(`pairs[${index}].weight`, weight);
    requirePositive(`pairs[${index}].spread`, spread);
    if (u !== undefined) requireUncertainty(`pairs[${index}].u`, u);
  });
}

export function refusePairs<U extends Unit>(
  code: GeometryErrorCode,
  pairs: readonly MirrorPair<U>[],
  need: string,
): never {
  const points = pairs.map(({ one, other }) => (other === undefined ? [one] : [one, other]));
  refuse(code, "pairs", points, need);
}
