import { refusingAs } from "../../units/internal.js";
import { type DeepPoint, deepPoint, type Length, length, type Unit } from "../../units/index.js";
import { type DeepMirrorPair, refusePairs, requirePairs, ROBUST_PAIRS } from "./labelled-pair.js";
import {
  bisquareShares,
  favoursNormal,
  fitPlane,
  type FittedPlane,
  robustPlane,
} from "./robust-plane.js";
import type { Plane } from "../lines/plane.js";
import { dotProduct, spaceDifference, type SpaceVector } from "../lines/space-vector.js";
import type { SymmetricMatrix } from "./symmetric-matrix.js";

/** The plane across which labelled points come closest to their own mirror image. */
export interface MirrorPlane<U extends Unit> extends Plane<U> {
  /** The weighted centroid. */
  readonly through: DeepPoint<U>;
  /** Of length 1; its sign means nothing. */
  readonly normal: SpaceVector;
  /** Final weight of each pair: 0 where it lies too far off to have a say. */
  readonly weights: readonly number[];
  /** Whether misplaced pairs were kept from moving the plane. */
  readonly robust: boolean;
  /** Covariance of the normal's three parts, from the spreads of independent points. */
  readonly normalCovariance: SymmetricMatrix;
  /** Standard uncertainty of the plane's place, across itself, at `through`. */
  readonly throughU: Length<U>;
}

/**
 * The best mirror plane of labelled points in space, which a quarter of them cannot lead astray.
 *
 * The start is, of the planes half-way between the partners of each pair, the one that leaves the
 * least squares of the better three quarters of the pairs; bisquare steps with each pair's own fixed
 * spread lead on from there. Each step is a closed form: the normal is the direction of the least
 * eigenvalue of the symmetric sum of weight × point × partner about the weighted centroid. Under
 * seven pairs, or with `robust: false`, plain weighted least squares.
 *
 * @throws GeometryError `not-finite`, `out-of-range`; `ill-conditioned` where no direction mirrors
 * the points better than another; `inconsistent` where no plane suits them to within their spreads
 *
 * @example
 * ```ts
 * import { bestMirrorPlane } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * const spread = mm(1);
 * const { normal } = bestMirrorPlane([
 *   { one: mm([-16, 0, 0]), other: mm([16, 0, 4]), weight: 1, spread },
 *   { one: mm([-44, 0, -9]), other: mm([44, 0, 2]), weight: 1, spread },
 *   { one: mm([1, -60, 8]), weight: 1, spread },
 * ]);
 * normal; // → [0.99, 0.01, 0.12]
 * ```
 */
export function bestMirrorPlane<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  options: { readonly robust?: boolean } = {},
): MirrorPlane<U> {
  return refusingAs("bestMirrorPlane", () => {
    requirePairs(pairs);
    const robust = pairs.length >= ROBUST_PAIRS && options.robust !== false;
    const everything = pairs.map(() => 1);
    const plane = robust ? robustPlane(pairs) : fitPlane(pairs, everything);
    if (!favoursNormal(plane)) {
      const need = "one mirror plane";
      refusePairs("ill-conditioned", pairs, need);
    }
    const shares = robust ? bisquareShares(pairs, plane) : everything;
    const [x, y, z] = plane.through;
    return {
      through: deepPoint(x, y, z),
      normal: plane.normal,
      weights: pairs.map(({ weight }, index) => weight * (shares[index] as number)),
      robust,
      normalCovariance: covarianceOf(pairs, shares, plane),
      throughU: throughUOf(pairs, shares),
    };
  });
}

/**
 * Weights and directions count as fixed. A point moved by δ changes the matrix by
 * weight × (δ·partnerᵀ + partner·δᵀ), and the matrix turns its least direction towards the others by
 * the parts of that change over the distances of the eigenvalues.
 */
function covarianceOf<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  shares: readonly number[],
  { through, normal, eigen }: FittedPlane,
): SymmetricMatrix {
  const [least, ...others] = eigen;
  const across = others.map(({ vector, value }) => ({ vector, rate: 1 / (value - least.value) }));
  // Variances and covariance of the two turns.
  const turns = [0, 0, 0] as [number, number, number];
  pairs.forEach(({ one, other, weight, spread }, index) => {
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

/** A point moved by δ moves the centroid by its weight × δ over all weights. */
function throughUOf<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  shares: readonly number[],
): Length<U> {
  let [variance, total] = [0, 0];
  pairs.forEach(({ other, weight, spread }, index) => {
    const points = other === undefined ? 1 : 2;
    const counted = weight * (shares[index] as number);
    variance += points * (counted * spread) ** 2;
    total += points * counted;
  });
  return length(Math.sqrt(variance) / total);
}
