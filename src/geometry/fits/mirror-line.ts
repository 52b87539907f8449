import { flatPoint, type Length, length, type Unit } from "../../units/index.js";
import { refusingAs, refuse, toDegrees } from "../../units/internal.js";
import { type MirrorPair, refusePairs, requirePairs, ROBUST_PAIRS } from "./labelled-pair.js";
import type { Direction, Line } from "../lines/line.js";
import {
  bisquareAxis,
  favoursDirection,
  growthFor,
  leastSquaresAxis,
  leastTrimmedAxis,
  type MirrorAxis,
  type MirrorTerm,
  mirrorTerm,
  squaredShare,
} from "./mirror-axis.js";
import { bisquare, BISQUARE_CUT } from "./bisquare.js";
import { doubtOf } from "./mirror-doubt.js";

/** The line across which labelled points come closest to their own mirror image. */
export interface MirrorLine<U extends Unit> {
  /** Through the weighted centroid; which of its two directions it has means nothing. */
  readonly line: Line<U>;
  /** Final weight of each pair: 0 where it lies too far off to have a say. */
  readonly weights: readonly number[];
  /** How far each pair lies from its own mirror image, in its own spreads. */
  readonly mismatches: readonly number[];
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
 * convergence with each pair's own spread. Where the trimmed squares are more than spreads explain, all
 * spreads grow alike, so that the line follows its points without a jump. Under seven pairs, or with
 * `robust: false`, plain weighted least squares. Depth is ignored.
 *
 * Source: object symmetry, Klingenberg, Barluenga & Meyer, Evolution 2002;56:1909–1920.
 *
 * @throws GeometryError `ill-conditioned` where no direction mirrors the points better than another
 * @throws GeometryError `inconsistent` where no line suits the points to within seven times their
 * spreads
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
  return refusingAs("bestMirrorLine", () => {
    requirePairs(pairs);
    return mirrorLineOf(pairs, options.robust !== false);
  });
}

/** A line that is fitted, and what says how well. */
interface MirrorFit<U extends Unit> extends Pick<MirrorLine<U>, "line" | "robust">, GrownAxis {
  readonly terms: readonly MirrorTerm[];
}

/** The line of {@link bestMirrorLine} alone, for pairs that were checked at the door. */
export function mirrorFitOf<U extends Unit>(
  pairs: readonly MirrorPair<U>[],
  robustly: boolean,
): MirrorFit<U> {
  const [x, y] = roughCentre(pairs);
  const terms = pairs.map((pair) => termOf(pair, x, y));
  const robust = robustly && pairs.length >= ROBUST_PAIRS;
  const { axis, growth } = robust
    ? robustAxis(terms)
    : { axis: leastSquaresAxis(terms), growth: Infinity };
  if (!favoursDirection(axis)) {
    const need = "one mirror line";
    refusePairs("ill-conditioned", pairs, need);
  }
  const line = { through: flatPoint<U>(x + axis.x, y + axis.y), direction: halfAngle(axis) };
  return { line, robust, axis, growth, terms };
}

/** {@link bestMirrorLine} for pairs that were checked at the door. */
export function mirrorLineOf<U extends Unit>(
  pairs: readonly MirrorPair<U>[],
  robustly: boolean,
): MirrorLine<U> {
  const { line, robust, axis, growth, terms } = mirrorFitOf(pairs, robustly);
  const shares = terms.map((term) => squaredShare(term, axis));
  const weights = pairs.map(
    ({ weight }, index) => weight * bisquare((shares[index] as number) / growth),
  );
  const { turn, shift } = doubtOf(terms, pairs, axis, growth, line.direction);
  const mismatches = shares.map((share) => BISQUARE_CUT * Math.sqrt(share));
  return { line, weights, mismatches, robust, angleU: toDegrees(turn), throughU: length(shift) };
}

/** An axis with the growth of the squared spreads by which it was found. */
interface GrownAxis {
  readonly axis: MirrorAxis;
  readonly growth: number;
}

/** Spreads grown sevenfold: what lies so far from its mirror image is no symmetric figure (ours). */
const MOST_GROWTH = 49;

function robustAxis(terms: readonly MirrorTerm[]): GrownAxis {
  const start = leastTrimmedAxis(terms);
  const growth = growthFor(terms, start);
  const axis = growth < MOST_GROWTH ? bisquareAxis(terms, start, growth) : undefined;
  if (axis !== undefined) return { axis, growth };
  const points = terms.map(({ oneX, oneY, otherX, otherY }) => [oneX, oneY, otherX, otherY]);
  const need = "mirrored points";
  refuse("inconsistent", "pairs", points, need);
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
