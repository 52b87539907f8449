// The arithmetic of the best mirror line, on plain numbers without a unit.
//
// With points as complex numbers about their weighted centroid, the axis has half the angle of the
// sum of weight × point × partner, and what is left of the squares is 2 × (size − pull): everything
// follows from six sums over the pairs, from which single pairs can be subtracted again.

import { bisquare, BISQUARE_CUT } from "./bisquare.js";

/** An axis of mirroring, by a point on it and the cosine and sine of *twice* its angle. */
export interface MirrorAxis {
  readonly x: number;
  readonly y: number;
  readonly cosine: number;
  readonly sine: number;
  /** Sum of the weights. */
  readonly weight: number;
  /** Size of the sum that gives the angle: 0 where no direction is better than another. */
  readonly pull: number;
  /** Weighted sum of squared distances from the centroid. */
  readonly size: number;
}

/** The six sums from which an axis follows, or the share of one term in them. */
interface MirrorSums {
  readonly weight: number;
  readonly sumX: number;
  readonly sumY: number;
  readonly real: number;
  readonly imaginary: number;
  readonly squares: number;
}

/** A point with its partner, or a point of the axis as its own partner, and its share of the sums. */
export interface MirrorTerm extends MirrorSums {
  readonly oneX: number;
  readonly oneY: number;
  readonly otherX: number;
  readonly otherY: number;
  /** Turns a squared mismatch into the square of its share of the largest one that counts. */
  readonly perLimit: number;
  /** Its weight times the square of its spread: as much is left of its squares on average, or less. */
  readonly allowed: number;
}

/** Steps nearer than this share of the figure's size, and of a turn, no longer count. */
const CONVERGED = 1e-13;
const MOST_STEPS = 200;

/**
 * The term of one pair. Coordinates are best taken from somewhere among the points: sums of squares
 * lose digits far from the origin.
 */
export function mirrorTerm(
  oneX: number,
  oneY: number,
  otherX: number,
  otherY: number,
  paired: boolean,
  weight: number,
  spread: number,
): MirrorTerm {
  const counted = paired ? 2 * weight : weight;
  const limit = BISQUARE_CUT * spread;
  return {
    oneX,
    oneY,
    otherX,
    otherY,
    // A pair's mismatch is the difference of two points, that of a single point twice its distance.
    perLimit: 1 / ((paired ? 2 : 4) * limit * limit),
    allowed: counted * spread * spread,
    weight: counted,
    sumX: (counted * (oneX + otherX)) / 2,
    sumY: (counted * (oneY + otherY)) / 2,
    real: counted * (oneX * otherX - oneY * otherY),
    imaginary: counted * (oneX * otherY + oneY * otherX),
    squares: (counted * (oneX * oneX + oneY * oneY + otherX * otherX + otherY * otherY)) / 2,
  };
}

/** The axis that leaves the least squares over all ways of setting two terms aside. */
export function leastTrimmedAxis(terms: readonly MirrorTerm[]): MirrorAxis {
  const { weight, sumX, sumY, real, imaginary, squares } = sumsOf(terms);
  let least = Number.POSITIVE_INFINITY;
  let first = 0;
  let second = 1;
  for (let i = 0; i < terms.length; i++) {
    const one = terms[i] as MirrorTerm;
    for (let j = i + 1; j < terms.length; j++) {
      const other = terms[j] as MirrorTerm;
      const kept = weight - one.weight - other.weight;
      const x = sumX - one.sumX - other.sumX;
      const y = sumY - one.sumY - other.sumY;
      const pullReal = real - one.real - other.real - (x * x - y * y) / kept;
      const pullImaginary = imaginary - one.imaginary - other.imaginary - (2 * x * y) / kept;
      const size = squares - one.squares - other.squares - (x * x + y * y) / kept;
      const left = size - Math.sqrt(pullReal * pullReal + pullImaginary * pullImaginary);
      if (left < least) {
        least = left;
        first = i;
        second = j;
      }
    }
  }
  const shares = terms.map((_, index) => (index === first || index === second ? 0 : 1));
  return leastSquaresAxis(terms, shares);
}

/**
 * How many times as large as their squares the squared spreads have to be for terms that mirror each
 * other so badly: 1 where the best of them lie within their spreads.
 *
 * What least trimmed squares leave changes steadily with the points, also where the two terms that are
 * set aside become others. Grown by it, the cut of the bisquare is so wide wherever terms contradict
 * each other that one axis suits them best: with fixed spreads there are rivals, far apart.
 */
export function growthFor(terms: readonly MirrorTerm[], { size, pull }: MirrorAxis): number {
  const allowed = terms.reduce((sum, term) => sum + term.allowed, 0);
  return Math.max(1, (size - pull) / (USUALLY_LEFT * allowed)) ** GROWTH_POWER;
}

/**
 * Share of what is allowed that is left of eleven terms, two of them set aside, where errors are normal
 * and as large as the spreads (by draws of ours).
 */
const USUALLY_LEFT = 0.6;

/**
 * The least power that leaves one axis of 840 drawn from real faces, turned by up to 30°, but for two
 * (ours): the more spreads grow, the more say a misplaced term has.
 */
const GROWTH_POWER = 0.7;

/**
 * Bisquare steps from an axis to convergence: each term counts by how far it lies off the last one,
 * measured in its own spread. No axis where no term is left, or those left favour none.
 */
export function bisquareAxis(
  terms: readonly MirrorTerm[],
  from: MirrorAxis,
  growth: number,
): MirrorAxis | undefined {
  const shares = terms.map(() => 1);
  let axis = from;
  for (let step = 0; step < MOST_STEPS; step++) {
    const last = axis;
    for (let index = 0; index < terms.length; index++) {
      shares[index] = bisquare(squaredShare(terms[index] as MirrorTerm, last) / growth);
    }
    axis = leastSquaresAxis(terms, shares);
    if (!favoursDirection(axis)) return undefined;
    const moved = Math.abs(axis.x - last.x) + Math.abs(axis.y - last.y);
    const turned = Math.abs(axis.cosine - last.cosine) + Math.abs(axis.sine - last.sine);
    if (turned < CONVERGED && moved * moved * axis.weight < CONVERGED * CONVERGED * axis.size)
      break;
  }
  return axis;
}

/** Square of a term's share of the largest mismatch that counts, as long as spreads do not grow. */
export function squaredShare(term: MirrorTerm, axis: MirrorAxis): number {
  return squaredMismatch(term, axis) * term.perLimit;
}

/** Whether the sums tell one direction from another, beyond rounding. */
export function favoursDirection(axis: MirrorAxis): boolean {
  return axis.pull > ROUNDING * axis.size && axis.weight > 0;
}

const ROUNDING = 1e-9;

/** Squared distance of a term's point from the mirror image of its partner. */
function squaredMismatch(term: MirrorTerm, axis: MirrorAxis): number {
  const oneX = term.oneX - axis.x;
  const oneY = term.oneY - axis.y;
  const otherX = term.otherX - axis.x;
  const otherY = term.otherY - axis.y;
  const x = oneX - (axis.cosine * otherX + axis.sine * otherY);
  const y = oneY - (axis.sine * otherX - axis.cosine * otherY);
  return x * x + y * y;
}

/** The axis of least weighted squares of all terms alike, or of each by its share. */
export function leastSquaresAxis(
  terms: readonly MirrorTerm[],
  shares?: readonly number[],
): MirrorAxis {
  const { weight, sumX, sumY, real, imaginary, squares } = sumsOf(terms, shares);
  const x = sumX / weight;
  const y = sumY / weight;
  const pullReal = real - weight * (x * x - y * y);
  const pullImaginary = imaginary - weight * 2 * x * y;
  const pull = Math.sqrt(pullReal * pullReal + pullImaginary * pullImaginary);
  const size = squares - weight * (x * x + y * y);
  return { x, y, cosine: pullReal / pull, sine: pullImaginary / pull, weight, pull, size };
}

/** Of all terms alike, or each by its share. */
function sumsOf(terms: readonly MirrorTerm[], shares?: readonly number[]): MirrorSums {
  const sums = { weight: 0, sumX: 0, sumY: 0, real: 0, imaginary: 0, squares: 0 };
  for (let index = 0; index < terms.length; index++) {
    const term = terms[index] as MirrorTerm;
    const share = shares === undefined ? 1 : (shares[index] as number);
    sums.weight += share * term.weight;
    sums.sumX += share * term.sumX;
    sums.sumY += share * term.sumY;
    sums.real += share * term.real;
    sums.imaginary += share * term.imaginary;
    sums.squares += share * term.squares;
  }
  return sums;
}
