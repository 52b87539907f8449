import {
  type Measured,
  type Note,
  type NoteValues,
  type Outcome,
  type Side,
} from "../units/index.js";
import { decisionOn } from "../units/internal.js";
import type { CaptureLimit, CaptureLimits, LimitedCheck } from "./limits.js";
import type { FindingCode, FindingNotes, Need, Question } from "./notes.js";

/** What is checked: against a limit, for a contradiction, or whether there is enough to check. */
export type CaptureCheck = LimitedCheck | "sides" | "landmarks" | "upright" | "relaxed";

const SEVERITIES = ["retake", "caution", "unchecked", "declared"] as const;

/**
 * What a finding means, the most serious first: `"retake"`, take another picture; `"caution"`, use
 * this one with care; `"unchecked"`, nothing could be said; `"declared"`, somebody's word stands
 * for it.
 */
export type FindingSeverity = (typeof SEVERITIES)[number];

/**
 * What speaks against a capture, or what could not be checked. `say` tells both what was found and what to
 * do, `sayAdvice` only the latter.
 */
export interface Finding extends Note<FindingCode> {
  readonly check: CaptureCheck;
  readonly severity: FindingSeverity;
  /** Present where only one side is meant. */
  readonly side?: Side;
  /** Present where something was measured, in the unit of its check. */
  readonly measured?: Measured;
  readonly limit?: CaptureLimit;
  readonly outcome?: Outcome;
}

/** The most serious first; findings of equal severity keep their order. */
export function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  return SEVERITIES.flatMap((severity) => findings.filter((one) => one.severity === severity));
}

export function finding<Code extends FindingCode>(
  check: CaptureCheck,
  code: Code,
  severity: FindingSeverity,
  values: FindingNotes[Code] & NoteValues,
): Finding {
  return { code, values, check, severity };
}

/** That something could not be looked at, and what it would take. */
export function unchecked(check: Unseen, need: Need, side?: Side): Finding {
  return finding(check, "not-checked", "unchecked", { what: questionOf(check, side), need });
}

/** What is asked of a capture, and may not be seen. */
type Unseen = LimitedCheck | "sides";

function questionOf(check: Unseen, side: Side | undefined): Question {
  if (check === "eyeOpening") return `eyeOpening-${side ?? "right"}`;
  return check === "browHeight" && side !== undefined ? `browHeight-${side}` : check;
}

/** A value read from a capture, or that it cannot be read. */
export interface Reading {
  readonly check: LimitedCheck;
  readonly measured: Measured | undefined;
  /** What it takes to read it; default what the check takes. */
  readonly need?: Need;
  readonly side?: Side;
  /** What the sentences need besides `value`, `u`, and the sizes of the value and of the limit. */
  readonly values?: NoteValues;
  /** What is said where the picture cannot tell whether the client or something else is to blame. */
  readonly ambiguous?: FindingCode;
}

/** What is said of a value too low, and of one too high. */
const SAID: {
  readonly [Check in LimitedCheck]: readonly [tooLow: FindingCode, tooHigh: FindingCode];
} = {
  roll: ["head-tilted", "head-tilted"],
  yaw: ["head-turned", "head-turned"],
  pitch: ["chin-lowered", "chin-raised"],
  eyeOpening: ["eye-closed", "eye-closed"],
  gazeAcross: ["looking-aside", "looking-aside"],
  gazeUp: ["looking-down", "looking-up"],
  mouthOpening: ["lips-apart", "lips-apart"],
  browHeight: ["brow-lowered", "brow-raised"],
  resolution: ["too-few-pixels", "too-few-pixels"],
  cameraDistance: ["camera-too-near", "camera-too-near"],
  irisesAcross: ["eyes-narrow-for-irises", "eyes-wide-for-irises"],
  irisDifference: ["irises-unequal", "irises-unequal"],
  pupilDistance: ["pupil-distance-implausible", "pupil-distance-implausible"],
  irisWidth: ["iris-width-implausible", "iris-width-implausible"],
  noseHeight: ["picture-stretched", "picture-stretched"],
  canthalIndex: ["canthal-index-implausible", "canthal-index-implausible"],
};

/** Nothing where the value keeps its limit. */
export function judged(reading: Reading, limits: CaptureLimits): readonly Finding[] {
  const { check, measured, need = check, side, values, ambiguous } = reading;
  if (measured === undefined) return [unchecked(check, need, side)];
  const limit = limits[check];
  const { outcome } = decisionOn(measured, limit.limits, { rule: limit.rule });
  if (outcome === "within") return [];
  const high = liesHigh(measured.value, limit);
  const onSide = side === undefined ? {} : { side };
  const shown = {
    value: measured.value,
    size: Math.abs(measured.value),
    u: measured.u,
    limit: Math.abs((high ? limit.limits.upper : limit.limits.lower) ?? 0),
    outcome,
    ...onSide,
    ...values,
  };
  const code = ambiguous ?? SAID[check][high ? 1 : 0];
  const severity = outcome === "outside" && ambiguous === undefined ? limit.severity : "caution";
  return [{ code, values: shown, check, severity, ...onSide, measured, limit, outcome }];
}

function liesHigh(
  value: number,
  { limits: { lower = -Infinity, upper = Infinity } }: CaptureLimit,
): boolean {
  return upper - value <= value - lower;
}
