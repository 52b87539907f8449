export type {
  EvennessGrade,
  GradedItem,
  GradeOutcome,
  GradePoints,
  GradeResult,
  GradingOptions,
  GradingReference,
  MapGrade,
  ReferenceGrade,
  UngradedItem,
} from "./grade.js";
export { gradeMap } from "./grade-map.js";
export { type Rubric, type RubricItem, RULER_SHEET_RUBRIC } from "./rubric.js";
export type { GradeCode, UngradedCode } from "./words.js";
