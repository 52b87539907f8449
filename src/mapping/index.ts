export { comparisonFindings } from "./plan/comparison-findings.js";
export type { Caution, PlanFinding } from "./plan/cautions.js";
export type { CautionCode } from "./plan/words.js";
export { checkDrawn } from "./drawn/check-drawn.js";
export { checkReadings } from "./drawn/check-readings.js";
export {
  CARRIES,
  type Carry,
  type Lead,
  LEADS,
  LEVELS,
  type Levels,
  TAIL_HEIGHTS,
  type TailHeight,
} from "./choices/choice-tables.js";
export type { Choices, Pin } from "./choices/choices.js";
export { DEPENDENT_DOTS, type DependentDots } from "./choices/dependent-dots.js";
export type {
  Deviation,
  DotDeviation,
  DrawnCheck,
  DrawnMap,
  DrawnOptions,
  MeasureDeviation,
} from "./drawn/deviation.js";
export { evenReadings, type ReadingMove } from "./drawn/even-readings.js";
export { everyChoice } from "./choices/every-choice.js";
export {
  type MapInput,
  type MapRecord,
  RECORD_VERSION,
  type RecordExtras,
  type RecordNote,
  recordOf,
  replay,
} from "./record/map-record.js";
export type { DotMove, DotPlacing, Move } from "./plan/moves.js";
export type { DotOrigin, PlannedDots, SettledChoices } from "./dots/planned-dots.js";
export type { BrowPlan } from "./plan/plan.js";
export { planBrows, planOnPhoto, type PlanOptions } from "./plan/plan-brows.js";
export { planDots } from "./dots/plan-dots.js";
export { planOverlap } from "./plan/plan-overlap.js";
export { type PlannableFace, requirePlannable } from "./dots/plannable-face.js";
export type { ReasonCode } from "./dots/words.js";
export { weighChoices } from "./weighing/weigh-choices.js";
export type {
  PlannedChoice,
  UnplannedChoice,
  WeighedChoice,
  WeighedChoices,
  WeighOptions,
} from "./weighing/weighed-choice.js";
export type { WeighingCode } from "./weighing/words.js";
export type { RulerCheck, WorkDirection, WorkStage, WorkStep } from "./record/work-steps.js";
export { type WorkOptions, workSteps } from "./record/work-steps.js";
