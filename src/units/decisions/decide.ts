import { requireFinite } from "../quantities/require.js";
import { refuse } from "../quantities/geometry-error.js";
import { type Measured, requireUncertainty } from "../uncertainty/measured.js";
import {
  normalDensity,
  normalDistribution,
  quantileOf,
} from "../uncertainty/normal-distribution.js";
import type { Note } from "../quantities/note.js";
import { riseToRoot } from "../uncertainty/rise-to-root.js";
import { advice, type AdviceCode } from "./notes.js";

/** What is allowed: at least one of the two limits, in the unit of the value decided on. */
export interface Limits {
  readonly lower?: number;
  readonly upper?: number;
}

/** What a decision may be; `"undecided"` where neither of the others is proven. */
export type Outcome = (typeof OUTCOMES)[number];

/** Everything that a decision may be. */
export const OUTCOMES = ["within", "outside", "undecided"] as const;

/**
 * How a decision is made: `"guarded"` asks for proof and may leave it undecided, `"simple"` looks
 * at the value only and shares the risk: for use during treatment.
 */
export type DecisionRule = (typeof DECISION_RULES)[number];

/** All rules by which a decision is made. */
export const DECISION_RULES = ["guarded", "simple"] as const;

/** Options of {@link decide}. */
export interface DecisionOptions {
  /** Default `"guarded"`. */
  readonly rule?: DecisionRule;
  /** Probability asked of a proof, more than 0.5 and less than 1; default 0.95. */
  readonly confidence?: number;
}

/** Whether a measured value keeps its limits, how that was decided, and how good the measurement is. */
export interface Decision {
  readonly outcome: Outcome;
  readonly rule: DecisionRule;
  readonly confidence: number;
  readonly value: number;
  readonly u: number;
  readonly limits: Limits;
  /** Probability that the true value keeps the limits, for a normal measurement. */
  readonly probability: number;
  /**
   * How far inside a limit a value has to lie to be accepted; 0 under the simple rule, absent where no
   * value can be accepted.
   */
  readonly guardBand?: number;
  /**
   * What this measurement could still accept: under two limits the greatest distance from their
   * middle, under one limit the last value. Absent where no value can be accepted.
   */
  readonly acceptable?: number;
  /** What would settle an undecided result; absent on a limit, and where nothing is known of u. */
  readonly advice?: Note<AdviceCode>;
}

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
  { value, u }: Measured,
  limits: Limits,
  options: DecisionOptions = {},
): Decision {
  const { rule = "guarded", confidence = 0.95 } = options;
  requireFinite("decide", "value", value);
  if (u !== Infinity) requireUncertainty("decide", "u", u);
  requireLimits(limits);
  requireConfidence(confidence);
  const room = roomWithin(value, limits);
  const guardBand = rule === "simple" ? 0 : guardBandOf(widthOf(limits), u, confidence);
  const outcome = rule === "simple" ? atFaceValue(room) : proven(room, u, confidence);
  const advice =
    outcome === "undecided" && u !== Infinity ? adviceFor(room, u, confidence) : undefined;
  return {
    outcome,
    rule,
    confidence,
    value,
    u,
    limits,
    probability: conformance(room, u),
    ...(guardBand === undefined
      ? {}
      : { guardBand, acceptable: acceptableWith(guardBand, limits) }),
    ...(advice === undefined ? {} : { advice }),
  };
}

/** Distances of a value from its limits, inwards positive; infinite where there is no limit. */
interface Room {
  readonly nearer: number;
  readonly farther: number;
}

function roomWithin(value: number, { lower = -Infinity, upper = Infinity }: Limits): Room {
  const above = value - lower;
  const below = upper - value;
  return { nearer: Math.min(above, below), farther: Math.max(above, below) };
}

function atFaceValue({ nearer }: Room): Outcome {
  return nearer >= 0 ? "within" : "outside";
}

function proven(room: Room, u: number, confidence: number): Outcome {
  if (conformance(room, u) >= confidence) return "within";
  return keeping(-room.nearer, u) >= confidence ? "outside" : "undecided";
}

function conformance({ nearer, farther }: Room, u: number): number {
  return Math.max(0, keeping(nearer, u) + keeping(farther, u) - 1);
}

/** Probability that the true value is on the inner side of a limit at this distance. */
function keeping(distance: number, u: number): number {
  if (u === 0 || distance === Infinity) return distance >= 0 ? 1 : 0;
  return normalDistribution(distance / u);
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

function requireLimits(limits: Limits): void {
  const { lower, upper } = limits;
  if (lower === undefined && upper === undefined) {
    refuse("out-of-range", "decide", "limits", limits, "a lower limit, an upper limit, or both");
  }
  if (lower !== undefined) requireFinite("decide", "limits.lower", lower);
  if (upper !== undefined) requireFinite("decide", "limits.upper", upper);
  if (lower !== undefined && upper !== undefined && lower > upper) {
    refuse("out-of-range", "decide", "limits.lower", lower, `at most the upper limit, ${upper}`);
  }
}

function requireConfidence(confidence: number): void {
  if (!(confidence > 0.5 && confidence < 1)) {
    refuse("out-of-range", "decide", "confidence", confidence, "more than 0.5 and less than 1");
  }
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
