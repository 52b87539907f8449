export type { CautionCode } from "./cautions.js";
export { checkDrawn } from "./check-drawn.js";
export type { Choices, Lead, Pin, TailHeight } from "./choices.js";
export { DEPENDENT_DOTS, type DependentDots } from "./dependent-dots.js";
export type {
  Deviation,
  DotDeviation,
  DrawnCheck,
  DrawnMap,
  DrawnOptions,
  MeasureDeviation,
} from "./drawn-check.js";
export type { DotMove, DotPlacing, Move } from "./moves.js";
export type { BrowPlan, DotOrigin, MarkPlan, SettledChoices } from "./plan.js";
export { planBrows, planOnPhoto } from "./plan-brows.js";
export { planMarks } from "./plan-marks.js";
export { type PlannableFace, requirePlannable } from "./plannable-face.js";
export type { ReasonCode } from "./reasons.js";
export {
  type RulerCheck,
  type WorkDirection,
  type WorkOptions,
  type WorkStage,
  type WorkStep,
  workSteps,
} from "./work-steps.js";
