import type { Unit } from "../../units/index.js";
import { type DeepMirrorPair, refusePairs } from "./labelled-pair.js";
import {
  dotProduct,
  spaceAdvance,
  spaceDifference,
  type SpaceVector,
} from "../lines/space-vector.js";
import { bisquare, BISQUARE_CUT } from "./bisquare.js";
import { eigenPairs } from "./symmetric-matrix.js";

/** Share of the pairs that the trimmed start keeps: up to a quarter may be misplaced. */
const KEPT_SHARE = 0.75;

const MOST_STEPS = 200;
const CONVERGED = 1e-13;
const ROUNDING = 1e-9;

export interface Plane {
  readonly through: SpaceVector;
  /** Of length 1. */
  readonly normal: SpaceVector;
}

/** The plane of least weighted squares, and the matrix whose least direction is its normal. */
export interface FittedPlane extends Plane {
  readonly eigen: ReturnType<typeof eigenPairs>;
  /** Weighted sum of squared distances from the centroid. */
  readonly size: number;
}

export function fitPlane<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  shares: readonly number[],
): FittedPlane {
  let total = 0;
  let [x, y, z] = [0, 0, 0];
  pairs.forEach(({ one, other, weight }, index) => {
    const counted = (other === undefined ? 0.5 : 1) * weight * (shares[index] as number);
    const partner = other ?? one;
    total += 2 * counted;
    x += counted * (one[0] + partner[0]);
    y += counted * (one[1] + partner[1]);
    z += counted * (one[2] + partner[2]);
  });
  const through: SpaceVector = [x / total, y / total, z / total];
  const sums = { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 };
  let size = 0;
  pairs.forEach(({ one, other, weight }, index) => {
    const counted = (other === undefined ? 0.5 : 1) * weight * (shares[index] as number);
    const [aX, aY, aZ] = spaceDifference(one, through);
    const [bX, bY, bZ] = spaceDifference(other ?? one, through);
    sums.xx += counted * 2 * aX * bX;
    sums.yy += counted * 2 * aY * bY;
    sums.zz += counted * 2 * aZ * bZ;
    sums.xy += counted * (aX * bY + aY * bX);
    sums.xz += counted * (aX * bZ + aZ * bX);
    sums.yz += counted * (aY * bZ + aZ * bY);
    size += counted * (aX * aX + aY * aY + aZ * aZ + bX * bX + bY * bY + bZ * bZ);
  });
  const eigen = eigenPairs(sums);
  return { through, normal: eigen[0].vector, eigen, size };
}

/** Whether the sums tell one normal from another, beyond rounding. */
export function favoursNormal({ eigen: [least, next], size }: FittedPlane): boolean {
  return next.value - least.value > ROUNDING * size;
}

export function robustPlane<U extends Unit>(pairs: readonly DeepMirrorPair<U>[]): FittedPlane {
  let plane = fitPlane(pairs, sharesKept(pairs, trimmedStart(pairs)));
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const last = plane;
    plane = fitPlane(pairs, bisquareShares(pairs, last));
    if (!favoursNormal(plane)) {
      const need = "points that mirror each other to within a few spreads";
      refusePairs("inconsistent", pairs, need);
    }
    if (stepBetween(last, plane) < CONVERGED) break;
  }
  return plane;
}

/** How far a plane has turned and moved, both as shares of the figure. */
function stepBetween(last: Plane, next: FittedPlane): number {
  const sign = dotProduct(last.normal, next.normal) < 0 ? -1 : 1;
  const turned = Math.hypot(
    ...next.normal.map((part, axis) => part - sign * (last.normal[axis] as number)),
  );
  const moved = dotProduct(spaceDifference(next.through, last.through), next.normal);
  return turned + Math.abs(moved) / Math.sqrt(next.size);
}

/** Of the planes half-way between partners, the one that suits three quarters of the pairs best. */
function trimmedStart<U extends Unit>(pairs: readonly DeepMirrorPair<U>[]): Plane {
  const rows = pairRows(pairs);
  const squares = new Float64Array(pairs.length);
  const everything = pairs.map(() => 1);
  let best: Plane = fitPlane(pairs, everything);
  let least = keptSquares(rows, best, squares, Infinity, Infinity);
  for (const { one, other } of pairs) {
    if (other === undefined) continue;
    const apart = spaceDifference(other, one);
    const size = Math.hypot(...apart);
    if (size === 0) continue;
    const plane: Plane = {
      through: spaceAdvance(one, apart, 0.5),
      normal: [apart[0] / size, apart[1] / size, apart[2] / size],
    };
    const kept = keptSquares(rows, plane, squares, least.sum, least.greatest);
    if (kept.sum >= least.sum) continue;
    least = kept;
    best = plane;
  }
  return best;
}

/** The squares of the better three quarters of the pairs: their sum, and the greatest of them. */
interface KeptSquares {
  readonly sum: number;
  readonly greatest: number;
}

const TOO_MANY: KeptSquares = { sum: Infinity, greatest: Infinity };

/**
 * Pairs as numbers, so many each: the point, its partner, their squared distance, and what a squared distance from
 * the mirror image is divided by.
 */
function pairRows<U extends Unit>(pairs: readonly DeepMirrorPair<U>[]): Float64Array {
  const rows = new Float64Array(PAIR_ROW * pairs.length);
  pairs.forEach(({ one, other = one, spread }, index) => {
    const [x, y, z] = spaceDifference(one, other);
    const points = other === one ? 4 : 2;
    rows.set([...one, ...other, x * x + y * y + z * z, points * spread * spread], PAIR_ROW * index);
  });
  return rows;
}

const PAIR_ROW = 8;

/**
 * Given up as soon as they cannot sum to less than `least`: they are no fewer than all squares as far as
 * each goes to a limit, less that limit for every pair that is left out.
 *
 * @param squares a row to write into
 */
function keptSquares(
  rows: Float64Array,
  { through, normal }: Plane,
  squares: Float64Array,
  least: number,
  limit: number,
): KeptSquares {
  const kept = Math.ceil(KEPT_SHARE * squares.length);
  const most = least + (squares.length - kept) * limit;
  const [nX, nY, nZ] = normal;
  const place = dotProduct(through, normal);
  const from = (at: number): number =>
    (rows[at] as number) * nX +
    (rows[at + 1] as number) * nY +
    (rows[at + 2] as number) * nZ -
    place;
  let limited = 0;
  for (let index = 0; index < squares.length; index += 1) {
    const at = PAIR_ROW * index;
    // What a mirror image lies off, squared: of both distances from the plane, since these need not be as far.
    const square =
      ((rows[at + 6] as number) + 4 * from(at) * from(at + 3)) / (rows[at + 7] as number);
    squares[index] = square;
    limited += Math.min(square, limit);
    if (limited > most) return TOO_MANY;
  }
  squares.sort();
  let sum = 0;
  for (let rank = 0; rank < kept; rank += 1) sum += squares[rank] as number;
  return { sum, greatest: squares[kept - 1] as number };
}

function sharesKept<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  plane: Plane,
): readonly number[] {
  const squares = pairs.map((pair) => squaredShare(pair, plane));
  const limit = Float64Array.from(squares).sort()[
    Math.ceil(KEPT_SHARE * squares.length) - 1
  ] as number;
  return squares.map((square) => (square <= limit ? 1 : 0));
}

export function bisquareShares<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  plane: Plane,
): readonly number[] {
  return pairs.map((pair) => bisquare(squaredShare(pair, plane) / BISQUARE_CUT ** 2));
}

/**
 * Squared distance of a pair's point from the mirror image of its partner, in its own spreads: a
 * pair's is the difference of two points, that of a single point twice its distance from the plane.
 */
function squaredShare<U extends Unit>(
  { one, other, spread }: DeepMirrorPair<U>,
  { through, normal }: Plane,
): number {
  const at = other ?? one;
  const [nX, nY, nZ] = normal;
  const fromPlane =
    (at[0] - through[0]) * nX + (at[1] - through[1]) * nY + (at[2] - through[2]) * nZ;
  if (other === undefined) return (fromPlane / spread) ** 2;
  const x = one[0] - (other[0] - 2 * fromPlane * nX);
  const y = one[1] - (other[1] - 2 * fromPlane * nY);
  const z = one[2] - (other[2] - 2 * fromPlane * nZ);
  return (x * x + y * y + z * z) / (2 * spread * spread);
}
