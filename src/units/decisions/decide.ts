import { refusingAs } from "../quantities/geometry-error.js";
import type { Note } from "../quantities/note.js";
import type { Measured } from "../uncertainty/measured.js";
import {
  normalDensity,
  normalDistribution,
  quantileOf,
} from "../uncertainty/normal-distribution.js";
import { riseToRoot } from "../uncertainty/rise-to-root.js";
import {
  type Decision,
  type DecisionOptions,
  decisionOn,
  type Limits,
  type Room,
  roomWithin,
} from "./decision.js";
import { advice, type AdviceCode } from "./notes.js";

/**
 * Decides whether a measured value keeps its limits, by default only where that is proven.
 *
 * Guarded: `"within"` where the probability of keeping both limits reaches the confidence,
 * `"outside"` where the probability of lying beyond one of them does, else `"undecided"`.
 *
 * Sources: JCGM 106:2012, clause 7 (probability of conformance); ISO 14253-1 (from memory: three
 * outcomes).
 *
 * @throws GeometryError `not-finite`, `out-of-range` for limits that are missing or crossed, a
 * negative u, or a confidence outside 0.5…1
 *
 * @example
 * ```ts
 * import { decide, measured } from "brow-geometry";
 * const heightDifference = measured(0.6, 0.37); // one placement by hand on each side
 * const decision = decide(heightDifference, { lower: -1, upper: 1 });
 * decision.outcome; // → "undecided"
 * decision.acceptable; // → 0.39
 * decide(heightDifference, { lower: -1, upper: 1 }, { rule: "simple" }).outcome; // → "within"
 * ```
 */
export function decide(
  measured: Measured,
  limits: Limits,
  options: DecisionOptions = {},
): Decision {
  return refusingAs("decide", () => {
    const decision = decisionOn(measured, limits, options);
    const { outcome, rule, confidence, value, u } = decision;
    const guardBand = rule === "simple" ? 0 : guardBandOf(widthOf(limits), u, confidence);
    const advice =
      outcome === "undecided" && u !== Infinity
        ? adviceFor(roomWithin(value, limits), u, confidence)
        : undefined;
    return {
      ...decision,
      ...(guardBand === undefined
        ? {}
        : { guardBand, acceptable: acceptableWith(guardBand, limits) }),
      ...(advice === undefined ? {} : { advice }),
    };
  });
}

function widthOf({ lower = -Infinity, upper = Infinity }: Limits): number {
  return upper - lower;
}

function acceptableWith(guardBand: number, limits: Limits): number {
  const { lower, upper } = limits;
  if (upper === undefined) return (lower ?? 0) + guardBand;
  return lower === undefined ? upper - guardBand : (upper - lower) / 2 - guardBand;
}

/** Repeating a placement more often than this is worse advice than a better instrument. */
const MOST_REPEATS = 20;

function adviceFor(room: Room, u: number, confidence: number): Note<AdviceCode> | undefined {
  const needed = decisiveUncertainty(room, confidence);
  if (needed === 0) return undefined;
  // The least bit of rounding must not turn four placements into five.
  const placements = Math.ceil((u / needed) ** 2 - 1e-9);
  return placements <= MOST_REPEATS
    ? advice("repeat-placements", { placements, u: needed })
    : advice("measure-better", { u: needed });
}

/** The greatest u at which this value would be decided; 0 where it lies on a limit. */
function decisiveUncertainty({ nearer, farther }: Room, confidence: number): number {
  const quantile = quantileOf(confidence);
  if (nearer <= 0) return -nearer / quantile;
  const precision = riseToRoot(quantile / nearer, (perU) => {
    const reached = normalDistribution(nearer * perU) + normalDistribution(farther * perU) - 1;
    const slope =
      nearer * normalDensity(nearer * perU) +
      (Number.isFinite(farther) ? farther * normalDensity(farther * perU) : 0);
    return (confidence - reached) / slope;
  });
  return 1 / precision;
}

/**
 * How far inside its limits a reading has to lie for the true value to keep both of them with the
 * confidence: the `g` at which Φ(g/u) + Φ((width − g)/u) − 1 reaches it, solved exactly.
 *
 * For one limit the width is infinite and `g` is the familiar 1.645 u. Under a width of
 * 2 Φ⁻¹((1 + confidence)/2) u, which is 3.92 u for 95 %, not even a reading in the middle can be
 * accepted: undefined.
 *
 * Source: JCGM 106:2012.
 */
function guardBandOf(width: number, u: number, confidence: number): number | undefined {
  if (u === 0) return 0;
  if (u === Infinity) return undefined;
  const ratio = width / u;
  if (2 * normalDistribution(ratio / 2) - 1 < confidence) return undefined;
  const band = riseToRoot(quantileOf(confidence), (at) => {
    const reached = normalDistribution(at) + normalDistribution(ratio - at) - 1;
    const slope = normalDensity(at) - normalDensity(ratio - at);
    return slope > 0 ? (confidence - reached) / slope : 0;
  });
  return u * Math.min(band, ratio / 2);
}
