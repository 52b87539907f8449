export { type CaptureFindingCode, captureFindings } from "./capture-findings.js";
export type { CautionCode } from "./cautions.js";
export { checkDrawn } from "./check-drawn.js";
export { checkReadings } from "./check-readings.js";
export type { Carry, Choices, Lead, Pin, TailHeight } from "./choices.js";
export { DEPENDENT_DOTS, type DependentDots } from "./dependent-dots.js";
export type {
  Deviation,
  DotDeviation,
  DrawnCheck,
  DrawnMap,
  DrawnOptions,
  MeasureDeviation,
} from "./drawn-check.js";
export { evenReadings, type ReadingMove } from "./even-readings.js";
export { everyChoice } from "./every-choice.js";
export {
  type MapInput,
  type MapRecord,
  RECORD_VERSION,
  type RecordExtras,
  type RecordNote,
  recordOf,
  replay,
} from "./map-record.js";
export { MEASURE_WORDS } from "./measure-words.js";
export type { DotMove, DotPlacing, Move } from "./moves.js";
export type { BrowPlan, DotOrigin, MarkPlan, SettledChoices } from "./plan.js";
export { planBrows, planOnPhoto, type PlanOptions } from "./plan-brows.js";
export { planMarks } from "./plan-marks.js";
export { planOverlap } from "./plan-overlap.js";
export { type PlannableFace, requirePlannable } from "./plannable-face.js";
export type { ReasonCode } from "./reasons.js";
export { weighChoices } from "./weigh-choices.js";
export type {
  PlannedChoice,
  UnplannedChoice,
  WeighedChoice,
  WeighedChoices,
  WeighOptions,
} from "./weighed-choice.js";
export type { WeighingCode } from "./weighing-notes.js";
export type { RulerCheck, WorkDirection, WorkStage, WorkStep } from "./work-step.js";
export { type WorkOptions, workSteps } from "./work-steps.js";
