import { requireFinite } from "../quantities/require.js";
import { refuse } from "../quantities/geometry-error.js";
import type { Note } from "../quantities/note.js";
import { type Measured, requireUncertainty } from "../uncertainty/measured.js";
import { normalDistribution } from "../uncertainty/normal-distribution.js";
import type { AdviceCode } from "./notes.js";

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

/**
 * Whether a measured value keeps its limits, and how that was decided; from {@link decide} also how good
 * the measurement is.
 */
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

/** What {@link decide} decides, refused as it refuses, without what would settle or improve it. */
export function decisionOn(
  { value, u }: Measured,
  limits: Limits,
  { rule = "guarded", confidence = 0.95 }: DecisionOptions = {},
): Decision {
  requireFinite("value", value);
  if (u !== Infinity) requireUncertainty("u", u);
  requireLimits(limits);
  requireConfidence(confidence);
  const room = roomWithin(value, limits);
  const outcome = rule === "simple" ? atFaceValue(room) : proven(room, u, confidence);
  return { outcome, rule, confidence, value, u, limits, probability: conformance(room, u) };
}

/** Distances of a value from its limits, inwards positive; infinite where there is no limit. */
export interface Room {
  readonly nearer: number;
  readonly farther: number;
}

export function roomWithin(value: number, { lower = -Infinity, upper = Infinity }: Limits): Room {
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

function requireLimits(limits: Limits): void {
  const { lower, upper } = limits;
  if (lower === undefined && upper === undefined) {
    refuse("out-of-range", "limits", limits, "a lower limit, an upper limit, or both");
  }
  if (lower !== undefined) requireFinite("limits.lower", lower);
  if (upper !== undefined) requireFinite("limits.upper", upper);
  if (lower !== undefined && upper !== undefined && lower > upper) {
    refuse("out-of-range", "limits.lower", lower, `at most the upper limit, ${upper}`);
  }
}

function requireConfidence(confidence: number): void {
  if (!(confidence > 0.5 && confidence < 1)) {
    refuse("out-of-range", "confidence", confidence, "more than 0.5 and less than 1");
  }
}
