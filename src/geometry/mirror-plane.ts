import {
  type DeepPoint,
  deepPoint,
  GeometryError,
  type Length,
  requireFinitePoint,
  requirePositive,
  type Unit,
} from "../units/index.js";
import { dotProduct, spaceAdvance, spaceDifference, type SpaceVector } from "./space-vector.js";
import { eigenPairs, type SymmetricMatrix } from "./symmetric-matrix.js";

/**
 * A point of a roughly symmetric body together with its partner on the other side; without `other`
 * the point belongs on the plane and is its own partner.
 */
export interface DeepMirrorUnit<U extends Unit> {
  readonly one: DeepPoint<U>;
  readonly other?: DeepPoint<U>;
  /** How much the unit counts before its place is judged, more than 0; a pair counts twice. */
  readonly weight: number;
  /** Standard uncertainty of each coordinate of its points, more than 0. */
  readonly spread: Length<U>;
}

/** The plane across which labelled points come closest to their own mirror image. */
export interface MirrorPlane<U extends Unit> {
  /** The weighted centroid. */
  readonly through: DeepPoint<U>;
  /** Of length 1; its sign means nothing. */
  readonly normal: SpaceVector;
  /** Final weight of each unit: 0 where it lies too far off to have a say. */
  readonly weights: readonly number[];
  /** Whether misplaced units were kept from moving the plane. */
  readonly robust: boolean;
  /** Covariance of the normal's three parts, from the spreads of independent points. */
  readonly normalCovariance: SymmetricMatrix;
}

/** Under this many units all are kept, as for the mirror line. */
const ROBUST_UNITS = 7;

/** Share of the units that the trimmed start keeps: up to a quarter may be misplaced. */
const KEPT_SHARE = 0.75;

/** Tukey's tuning constant, as for the mirror line. */
const BISQUARE = 4.685;

const MOST_STEPS = 200;
const CONVERGED = 1e-13;
const ROUNDING = 1e-9;

/**
 * The best mirror plane of labelled points in space, which a quarter of them can not lead astray.
 *
 * The start is, of the planes half-way between the partners of each pair, the one that leaves the
 * least squares of the better three quarters of the units; bisquare steps with each unit's own fixed
 * spread lead on from there. Each step is a closed form: the normal is the direction of the least
 * eigenvalue of the symmetric sum of weight × point × partner about the weighted centroid. Under
 * seven units, or with `robust: false`, plain weighted least squares.
 *
 * @throws GeometryError `not-finite`, `out-of-range`; `ill-conditioned` where no direction mirrors
 * the points better than another; `inconsistent` where no plane suits them to within their spreads
 *
 * @example
 * ```ts
 * import { bestMirrorPlane, mm } from "brow-geometry";
 * const spread = mm(1);
 * const { normal } = bestMirrorPlane([
 *   { one: mm([-16, 0, 0]), other: mm([16, 0, 4]), weight: 1, spread },
 *   { one: mm([-44, 0, -9]), other: mm([44, 0, 2]), weight: 1, spread },
 *   { one: mm([1, -60, 8]), weight: 1, spread },
 * ]);
 * normal; // → [0.99, 0.00, 0.12]
 * ```
 */
export function bestMirrorPlane<U extends Unit>(
  units: readonly DeepMirrorUnit<U>[],
  options: { readonly robust?: boolean } = {},
): MirrorPlane<U> {
  units.forEach(requireUnit);
  const robust = units.length >= ROBUST_UNITS && options.robust !== false;
  const everything = units.map(() => 1);
  const plane = robust ? robustPlane(units) : fitPlane(units, everything);
  if (!favoursNormal(plane)) throw withoutDirection(units);
  const shares = robust ? bisquareShares(units, plane) : everything;
  const [x, y, z] = plane.through;
  return {
    through: deepPoint(x, y, z),
    normal: plane.normal,
    weights: units.map(({ weight }, index) => weight * (shares[index] as number)),
    robust,
    normalCovariance: covarianceOf(units, shares, plane),
  };
}

interface Plane {
  readonly through: SpaceVector;
  /** Of length 1. */
  readonly normal: SpaceVector;
}

/** The plane of least weighted squares, and the matrix whose least direction is its normal. */
interface FittedPlane extends Plane {
  readonly eigen: ReturnType<typeof eigenPairs>;
  /** Weighted sum of squared distances from the centroid. */
  readonly size: number;
}

function fitPlane<U extends Unit>(
  units: readonly DeepMirrorUnit<U>[],
  shares: readonly number[],
): FittedPlane {
  let total = 0;
  let [x, y, z] = [0, 0, 0];
  units.forEach(({ one, other, weight }, index) => {
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
  units.forEach(({ one, other, weight }, index) => {
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
function favoursNormal({ eigen: [least, next], size }: FittedPlane): boolean {
  return next.value - least.value > ROUNDING * size;
}

function robustPlane<U extends Unit>(units: readonly DeepMirrorUnit<U>[]): FittedPlane {
  let plane = fitPlane(units, sharesKept(units, trimmedStart(units)));
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const last = plane;
    plane = fitPlane(units, bisquareShares(units, last));
    if (!favoursNormal(plane)) throw withoutAgreement(units);
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

/** Of the planes half-way between partners, the one that suits three quarters of the units best. */
function trimmedStart<U extends Unit>(units: readonly DeepMirrorUnit<U>[]): Plane {
  let best: Plane = fitPlane(
    units,
    units.map(() => 1),
  );
  let least = keptSquares(units, best);
  for (const { one, other } of units) {
    if (other === undefined) continue;
    const apart = spaceDifference(other, one);
    const size = Math.hypot(...apart);
    if (size === 0) continue;
    const plane: Plane = {
      through: spaceAdvance(one, apart, 0.5),
      normal: [apart[0] / size, apart[1] / size, apart[2] / size],
    };
    const squares = keptSquares(units, plane);
    if (squares >= least) continue;
    least = squares;
    best = plane;
  }
  return best;
}

function keptSquares<U extends Unit>(units: readonly DeepMirrorUnit<U>[], plane: Plane): number {
  const squares = units.map((unit) => squaredShare(unit, plane)).sort((one, other) => one - other);
  let sum = 0;
  for (let rank = 0; rank < KEPT_SHARE * squares.length; rank += 1) sum += squares[rank] as number;
  return sum;
}

function sharesKept<U extends Unit>(
  units: readonly DeepMirrorUnit<U>[],
  plane: Plane,
): readonly number[] {
  const squares = units.map((unit) => squaredShare(unit, plane));
  const sorted = [...squares].sort((one, other) => one - other);
  const limit = sorted[Math.ceil(KEPT_SHARE * sorted.length) - 1] as number;
  return squares.map((square) => (square <= limit ? 1 : 0));
}

function bisquareShares<U extends Unit>(
  units: readonly DeepMirrorUnit<U>[],
  plane: Plane,
): readonly number[] {
  return units.map((unit) => {
    const share = squaredShare(unit, plane) / BISQUARE ** 2;
    return share < 1 ? (1 - share) ** 2 : 0;
  });
}

/**
 * Squared distance of a unit's point from the mirror image of its partner, in its own spreads: a
 * pair's is the difference of two points, that of a single point twice its distance from the plane.
 */
function squaredShare<U extends Unit>(
  { one, other, spread }: DeepMirrorUnit<U>,
  { through, normal }: Plane,
): number {
  if (other === undefined) {
    return (dotProduct(spaceDifference(one, through), normal) / spread) ** 2;
  }
  const fromPlane = dotProduct(spaceDifference(other, through), normal);
  const [x, y, z] = spaceDifference(one, spaceAdvance(other, normal, -2 * fromPlane));
  return (x * x + y * y + z * z) / (2 * spread * spread);
}

/**
 * Weights and directions count as fixed. A point moved by δ changes the matrix by
 * weight × (δ·partnerᵀ + partner·δᵀ), and the matrix turns its least direction towards the others by
 * the parts of that change over the distances of the eigenvalues.
 */
function covarianceOf<U extends Unit>(
  units: readonly DeepMirrorUnit<U>[],
  shares: readonly number[],
  { through, normal, eigen }: FittedPlane,
): SymmetricMatrix {
  const [least, ...others] = eigen;
  const across = others.map(({ vector, value }) => ({ vector, rate: 1 / (value - least.value) }));
  // Variances and covariance of the two turns.
  const turns = [0, 0, 0] as [number, number, number];
  units.forEach(({ one, other, weight, spread }, index) => {
    const effect = (weight * (shares[index] as number) * spread) ** 2;
    for (const partner of other === undefined ? [one] : [one, other]) {
      const at = spaceDifference(partner, through);
      const fromPlane = dotProduct(at, normal) ** 2;
      const [first, second] = across.map(({ vector }) => dotProduct(at, vector)) as [
        number,
        number,
      ];
      turns[0] += effect * (fromPlane + first * first);
      turns[1] += effect * (fromPlane + second * second);
      turns[2] += effect * first * second;
    }
  });
  const [first, second] = across as [(typeof across)[0], (typeof across)[0]];
  const entry = (row: 0 | 1 | 2, column: 0 | 1 | 2): number =>
    turns[0] * first.rate ** 2 * first.vector[row] * first.vector[column] +
    turns[1] * second.rate ** 2 * second.vector[row] * second.vector[column] +
    turns[2] *
      first.rate *
      second.rate *
      (first.vector[row] * second.vector[column] + second.vector[row] * first.vector[column]);
  return {
    xx: entry(0, 0),
    yy: entry(1, 1),
    zz: entry(2, 2),
    xy: entry(0, 1),
    xz: entry(0, 2),
    yz: entry(1, 2),
  };
}

function requireUnit<U extends Unit>(unit: DeepMirrorUnit<U>, index: number): void {
  const where = "bestMirrorPlane";
  requireFinitePoint(where, `units[${index}].one`, unit.one);
  if (unit.other !== undefined) requireFinitePoint(where, `units[${index}].other`, unit.other);
  requirePositive(where, `units[${index}].weight`, unit.weight);
  requirePositive(where, `units[${index}].spread`, unit.spread);
}

function withoutDirection<U extends Unit>(units: readonly DeepMirrorUnit<U>[]): GeometryError {
  return new GeometryError("ill-conditioned", {
    where: "bestMirrorPlane",
    field: "units",
    value: units.map(({ one, other }) => (other === undefined ? [one] : [one, other])),
    need: "points that mirror each other better across one plane than across others",
  });
}

function withoutAgreement<U extends Unit>(units: readonly DeepMirrorUnit<U>[]): GeometryError {
  return new GeometryError("inconsistent", {
    where: "bestMirrorPlane",
    field: "units",
    value: units.map(({ one, other }) => (other === undefined ? [one] : [one, other])),
    need: "points that mirror each other to within a few spreads",
  });
}
