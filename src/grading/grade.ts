import type { FaceMeasureName, FaceMeasures, MeasureName } from "../landmarks/index.js";
import type { BrowPlan, DrawnOptions } from "../mapping/index.js";
import type { Decision, Measured, Note, Side, ToleranceSet } from "../units/index.js";
import type { Rubric, RubricItem } from "./rubric.js";
import type { FeedbackCode, GradeCode, UngradedCode } from "./notes.js";

/**
 * What a map is graded against: a plan, whose figures are taken as asked for exactly; a sheet that
 * somebody read, whose readings are uncertain themselves; or nothing but its own evenness.
 */
export type GradingReference =
  | { readonly kind: "plan"; readonly plan: BrowPlan }
  | { readonly kind: "readings"; readonly readings: FaceMeasures<Measured> }
  | { readonly kind: "none" };

/**
 * How a map is graded; by default guarded at 95 %, under the tolerances of the plan that is the
 * reference, else under the working ones.
 */
export interface GradingOptions extends DrawnOptions {
  /** Default {@link RULER_SHEET_RUBRIC}. */
  readonly rubric?: Rubric;
  /** Share of all points, 0…1, that it takes to pass; left out, nobody passes or fails. */
  readonly passMark?: number;
}

interface GradedValue {
  readonly difference: Measured;
  readonly decision: Decision;
  /** What there was to earn. */
  readonly points: number;
  /** All points where it is within, none where it is outside or undecided. */
  readonly earned: number;
  /** For the course's record: `say` makes "left height of the arch: 2 mm too high" of it. */
  readonly feedback: Note<FeedbackCode>;
}

/** One reading of a map against its reference: drawn less reference. */
export interface ReferenceGrade extends GradedValue {
  readonly kind: "reference";
  readonly measure: FaceMeasureName;
  /** Left out for what is read between the sides. */
  readonly side?: Side;
  readonly drawn: Measured;
  /** Without uncertainty where it was asked for by a plan. */
  readonly reference: Measured;
}

/** One pair of readings of a map against each other: left less right. */
export interface EvennessGrade extends GradedValue {
  readonly kind: "evenness";
  readonly measure: MeasureName;
  readonly right: Measured;
  readonly left: Measured;
}

/** What was graded. */
export type GradedItem = ReferenceGrade | EvennessGrade;

/** What could not be graded, and why. */
export interface UngradedItem {
  readonly kind: RubricItem["kind"];
  readonly measure: FaceMeasureName;
  /** Left out where both sides are meant, or what is read between them. */
  readonly side?: Side;
  readonly points: number;
  readonly reason: Note<UngradedCode>;
}

/** Points of a part, or of the whole: earned, lost and open ones make up the total. */
export interface GradePoints {
  readonly total: number;
  readonly earned: number;
  /** Where a reading is proven to be outside. */
  readonly lost: number;
  /** Where a reading is undecided or missing: neither earned nor lost. */
  readonly open: number;
}

/** `"open"` where what is undecided or missing could still change it. */
export type GradeOutcome = "passed" | "failed" | "open";

/** Whether the pass mark is reached. */
export interface GradeResult {
  readonly passMark: number;
  /** Points that it takes. */
  readonly needed: number;
  readonly outcome: GradeOutcome;
}

/** A map, graded. */
export interface MapGrade {
  readonly rubric: Rubric;
  readonly tolerances: ToleranceSet;
  readonly items: readonly GradedItem[];
  readonly ungraded: readonly UngradedItem[];
  readonly points: {
    readonly all: GradePoints;
    readonly reference: GradePoints;
    readonly evenness: GradePoints;
  };
  /** Present where a pass mark was given. */
  readonly result?: GradeResult;
  /** What is undecided or missing, with what would settle it: nothing of it counts as wrong. */
  readonly toSettle: readonly Note<FeedbackCode | UngradedCode>[];
  /** The grade in a few notes. */
  readonly summary: readonly Note<GradeCode>[];
}
