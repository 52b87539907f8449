export type {
  EvennessGrade,
  GradeCode,
  GradedItem,
  GradeOutcome,
  GradePoints,
  GradeResult,
  GradingOptions,
  GradingReference,
  MapGrade,
  ReferenceGrade,
  UngradedCode,
  UngradedItem,
} from "./grade.js";
export { gradeMap } from "./grade-map.js";
export { type Rubric, type RubricItem, RULER_SHEET_RUBRIC } from "./rubric.js";
