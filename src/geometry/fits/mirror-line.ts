import { flatPoint, type Length, length, type Unit } from "../../units/index.js";
import { refuse, toDegrees } from "../../units/internal.js";
import { type MirrorPair, refusePairs, requirePairs, ROBUST_PAIRS } from "./labelled-pair.js";
import type { Direction, Line } from "../lines/line.js";
import {
  bisquareAxis,
  bisquareWeight,
  favoursDirection,
  leastSquaresAxis,
  leastTrimmedAxis,
  type MirrorAxis,
  type MirrorTerm,
  mirrorTerm,
} from "./mirror-axis.js";

/** The line across which labelled points come closest to their own mirror image. */
export interface MirrorLine<U extends Unit> {
  /** Through the weighted centroid; which of its two directions it has means nothing. */
  readonly line: Line<U>;
  /** Final weight of each pair: 0 where it lies too far off to have a say. */
  readonly weights: readonly number[];
  /** Whether any two misplaced pairs were kept from moving the line. */
  readonly robust: boolean;
  /** Standard uncertainty of the line's angle, in degrees. */
  readonly angleU: number;
  /** Standard uncertainty of the line's place, across itself, at `line.through`. */
  readonly throughU: Length<U>;
}

/**
 * The best mirror line of labelled points, which no two of them can lead astray.
 *
 * Exact least trimmed squares over all subsets that leave out two pairs, then bisquare steps to
 * convergence with each pair's own fixed spread. Under seven pairs, or with `robust: false`, plain
 * weighted least squares. Depth is ignored.
 *
 * Source: object symmetry, Klingenberg, Barluenga & Meyer, Evolution 2002;56:1909–1920.
 *
 * @throws GeometryError `ill-conditioned` where no direction mirrors the points better than another
 * @throws GeometryError `inconsistent` where no line suits the points to within their spreads
 *
 * @example
 * ```ts
 * import { bestMirrorLine } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * const spread = mm(1);
 * const { line, robust } = bestMirrorLine([
 *   { one: mm([-16, 0]), other: mm([16, 0]), weight: 1, spread },
 *   { one: mm([-44, 0]), other: mm([44, 0]), weight: 1, spread },
 *   { one: mm([0, -60]), weight: 1, spread },
 * ]);
 * line; // → { through: [0, -12], direction: [0, 1] }
 * robust; // → false
 * ```
 */
export function bestMirrorLine<U extends Unit>(
  pairs: readonly MirrorPair<U>[],
  options: { readonly robust?: boolean } = {},
): MirrorLine<U> {
  requirePairs("bestMirrorLine", pairs);
  return mirrorLineOf(pairs, options.robust !== false);
}

/** {@link bestMirrorLine} for pairs that were checked at the door. */
export function mirrorLineOf<U extends Unit>(
  pairs: readonly MirrorPair<U>[],
  robustly: boolean,
): MirrorLine<U> {
  const [x, y] = roughCentre(pairs);
  const terms = pairs.map((pair) => termOf(pair, x, y));
  const robust = robustly && pairs.length >= ROBUST_PAIRS;
  const axis = robust ? robustAxis(terms) : leastSquaresAxis(terms);
  if (!favoursDirection(axis)) {
    const need = "points that mirror each other better across one line than across others";
    refusePairs("ill-conditioned", "bestMirrorLine", pairs, need);
  }
  const weights = pairs.map(({ weight }, index) =>
    robust ? weight * bisquareWeight(terms[index] as MirrorTerm, axis) : weight,
  );
  const { angleU, throughU } = uncertaintyOf(terms, pairs, weights, axis);
  const line = { through: flatPoint<U>(x + axis.x, y + axis.y), direction: halfAngle(axis) };
  return { line, weights, robust, angleU, throughU };
}

function robustAxis(terms: readonly MirrorTerm[]): MirrorAxis {
  const axis = bisquareAxis(terms, leastTrimmedAxis(terms));
  if (axis !== undefined) return axis;
  const points = terms.map(({ oneX, oneY, otherX, otherY }) => [oneX, oneY, otherX, otherY]);
  const need = "points that mirror each other to within a few spreads";
  refuse("inconsistent", "bestMirrorLine", "pairs", points, need);
}

/**
 * The weights count as fixed. A point moved by δ moves the centroid by weight × δ / total, and turns
 * the sum that gives twice the angle by 2 × weight × partner × δ.
 */
function uncertaintyOf<U extends Unit>(
  terms: readonly MirrorTerm[],
  pairs: readonly MirrorPair<U>[],
  weights: readonly number[],
  axis: MirrorAxis,
): Pick<MirrorLine<U>, "angleU" | "throughU"> {
  let turning = 0;
  let shifting = 0;
  pairs.forEach(({ other, spread }, index) => {
    const term = terms[index] as MirrorTerm;
    const effect = ((weights[index] as number) * spread) ** 2;
    const one = (term.oneX - axis.x) ** 2 + (term.oneY - axis.y) ** 2;
    const partner = (term.otherX - axis.x) ** 2 + (term.otherY - axis.y) ** 2;
    turning += effect * (other === undefined ? one : one + partner);
    shifting += effect * (other === undefined ? 1 : 2);
  });
  return {
    angleU: toDegrees(Math.sqrt(turning) / axis.pull),
    throughU: length(Math.sqrt(shifting) / axis.weight),
  };
}

/** The root of a unit complex number, by the half that does not cancel. */
function halfAngle({ cosine, sine }: MirrorAxis): Direction {
  const larger = Math.sqrt((1 + Math.abs(cosine)) / 2);
  const smaller = sine / (2 * larger);
  return cosine < 0 ? [smaller, larger] : [larger, smaller];
}

function termOf<U extends Unit>(pair: MirrorPair<U>, x: number, y: number): MirrorTerm {
  const { one, other = one, weight, spread } = pair;
  return mirrorTerm(
    one[0] - x,
    one[1] - y,
    other[0] - x,
    other[1] - y,
    pair.other !== undefined,
    weight,
    spread,
  );
}

function roughCentre<U extends Unit>(pairs: readonly MirrorPair<U>[]): readonly [number, number] {
  let x = 0;
  let y = 0;
  for (const { one, other = one } of pairs) {
    x += one[0] + other[0];
    y += one[1] + other[1];
  }
  return [x / (2 * pairs.length), y / (2 * pairs.length)];
}
