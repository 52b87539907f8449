import {
  fitPolynomial,
  highestPeak,
  polynomialAt,
  polynomialWeights,
} from "../geometry/internal.js";
import {
  flatPoint,
  type FlatPoint,
  length,
  type Length,
  measured,
  type Measured,
  type Point,
  type Polyline,
} from "../units/index.js";

/** Where the upper border of a brow peaks, and how sure that is. */
export type NaturalArch =
  | {
      /** `"undetermined"` where `u` exceeds 2 mm: a place is given, and little is known of it. */
      readonly kind: "peak" | "undetermined";
      readonly at: FlatPoint<"mm">;
      /** Standard uncertainty of the place, along the border. */
      readonly u: Length<"mm">;
      /** Distance of the arch from the chord between upper start dot and tail end. */
      readonly rise: Measured<Length<"mm">>;
    }
  | {
      /** The border rises less than 1 mm over its chord, or less than twice that rise's `u`. */
      readonly kind: "flat";
      /** Where it is farthest from its chord all the same: no arch. Absent where it has no crest. */
      readonly farthest?: FlatPoint<"mm">;
      /** Negative where the border sags. */
      readonly rise: Measured<Length<"mm">>;
    };

/** A border that rises less than this over its chord has no arch; ours. */
const LEAST_RISE = 1;
/** …and so has one whose rise is within this many of its uncertainties; ours. */
const CLEAR_RISE = 2;
/** An arch whose place is less certain than this is not determined; ours. */
const WORST_PLACE = 2;

/**
 * The point of an upper border, from start to tail, that lies farthest from the chord between its
 * ends. `u` is the standard uncertainty of each of its points across the border.
 *
 * The highest point would wander with every tilt of the head; the farthest point turns with the
 * brow. It is read from a curve, because the points' own errors decide which of them is farthest:
 * the distance from the chord as a polynomial of the way along the border, fitted by least squares,
 * of degree 3 for 4 or 5 points, 4 from 6, 5 from 8, 6 from 10. Lower degrees pull a lateral arch
 * towards the middle, higher ones follow the errors. Over the way along the border, not over the
 * chord: tails may end steeply. Three points are taken as drawn, the middle one being the arch.
 *
 * The uncertainties follow from the fit, to first order, the chord's own ends included; where the
 * points scatter more about the curve than `u`, their scatter counts.
 */
export function naturalArch(border: Polyline<"mm">, u: Length<"mm">): NaturalArch {
  const shape = overChord(border);
  const points = shape.along.length;
  if (points === 2) return { kind: "flat", rise: measured(length(0), u) };
  return points === 3 ? cornerOf(shape, u) : crestOf(shape, u);
}

function cornerOf(shape: BorderOverChord, u: Length<"mm">): NaturalArch {
  const rise = shape.heights[1] as number;
  const weights = freeOfChord([0, 1, 0], shape.shares);
  const at = placeOverChord(shape, shape.shares[1] as number, rise);
  return judged(at, u, measured(length(rise), length(u * norm(weights))));
}

function crestOf(shape: BorderOverChord, u: Length<"mm">): NaturalArch {
  const { along, heights, shares } = shape;
  const degree = Math.min(MOST_DEGREE, Math.floor(along.length / 2) + 1);
  const fit = fitPolynomial(along, heights, degree);
  const error = Math.max(u, fit.scatter ?? 0);
  const uncertaintyOf = (weights: readonly number[]): number =>
    error * norm(freeOfChord(weights, shares));

  const end = along[along.length - 1] as number;
  const crest = highestPeak(fit, 0, end);
  const place = crest ?? end / 2;
  const height = polynomialAt(fit, place);
  const weights = polynomialWeights(fit, place);
  const rise = measured(length<"mm">(height), length<"mm">(uncertaintyOf(weights)));
  if (crest === undefined) return { kind: "flat", rise };

  // The crest lies where the slope is 0: an error of the slope moves it by 1/curvature of that,
  // and never by more than a place anywhere on the border would be uncertain.
  const slopeU = uncertaintyOf(polynomialWeights(fit, crest, 1));
  const wander = slopeU / Math.abs(polynomialAt(fit, crest, 2));
  // The same curve through the feet of the points: weights do not depend on what is fitted.
  const share = weights.reduce((sum, weight, index) => sum + weight * (shares[index] as number), 0);
  const at = placeOverChord(shape, share, height);
  return judged(at, length(Math.min(wander, end / Math.sqrt(12))), rise);
}

const MOST_DEGREE = 6;

function judged(at: FlatPoint<"mm">, u: Length<"mm">, rise: Measured<Length<"mm">>): NaturalArch {
  if (rise.value < LEAST_RISE || rise.value < CLEAR_RISE * rise.u)
    return { kind: "flat", farthest: at, rise };
  return { kind: u > WORST_PLACE ? "undetermined" : "peak", at, u, rise };
}

/** Weights of the points' own errors, from weights of their distances from a chord of its ends. */
function freeOfChord(weights: readonly number[], shares: readonly number[]): readonly number[] {
  const free = weights.slice();
  const last = free.length - 1;
  weights.forEach((weight, index) => {
    const share = shares[index] as number;
    free[0] = (free[0] as number) - weight * (1 - share);
    free[last] = (free[last] as number) - weight * share;
  });
  return free;
}

function norm(weights: readonly number[]): number {
  return Math.sqrt(weights.reduce((sum, weight) => sum + weight * weight, 0));
}

/** A border seen from the chord between its ends; points drawn twice in a row count once. */
export interface BorderOverChord {
  /** Way of each point along the border, in mm. */
  readonly along: readonly number[];
  /** Foot of each point on the chord: 0 at the first point, 1 at the last. */
  readonly shares: readonly number[];
  /** Distance of each point from the chord, in mm, positive above it. */
  readonly heights: readonly number[];
  readonly start: Point<"mm">;
  /** From the first point to the last. */
  readonly chord: readonly [x: number, y: number];
  /** Of length 1, square to the chord, upwards. */
  readonly up: readonly [x: number, y: number];
}

/** Lays a border out over its chord; its ends must differ. */
export function overChord(border: Polyline<"mm">): BorderOverChord {
  const start = border[0] as Point<"mm">;
  const end = border[border.length - 1] as Point<"mm">;
  const chord = [end[0] - start[0], end[1] - start[1]] as const;
  const size = Math.hypot(...chord);
  // Upwards on either side of the face, so that a mirrored border gives the same numbers.
  const turn = chord[0] < 0 ? -1 : 1;
  const up = [(-turn * chord[1]) / size, (turn * chord[0]) / size] as const;
  const along: number[] = [];
  const shares: number[] = [];
  const heights: number[] = [];
  let way = 0;
  let before = start;
  for (const point of border) {
    const step = Math.hypot(point[0] - before[0], point[1] - before[1]);
    if (step === 0 && along.length > 0) continue;
    way += step;
    before = point;
    const [x, y] = [point[0] - start[0], point[1] - start[1]];
    along.push(way);
    shares.push((x * chord[0] + y * chord[1]) / (size * size));
    heights.push(x * up[0] + y * up[1]);
  }
  return { along, shares, heights, start, chord, up };
}

/** The point over a share of the chord, at a height above it. */
export function placeOverChord(
  { start, chord, up }: BorderOverChord,
  share: number,
  height: number,
): FlatPoint<"mm"> {
  return flatPoint(
    start[0] + share * chord[0] + height * up[0],
    start[1] + share * chord[1] + height * up[1],
  );
}
