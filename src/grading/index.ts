export type { EvennessGrade, GradedItem, GradeOutcome, GradePoints, GradeResult } from "./grade.js";
export type { GradingOptions, GradingReference, MapGrade, ReferenceGrade } from "./grade.js";
export type { UngradedItem } from "./grade.js";
export { gradeMap } from "./grade-map.js";
export { type Rubric, type RubricItem, RULER_SHEET_RUBRIC } from "./rubric.js";
export type { FeedbackCode, GradeCode, UngradedCode } from "./notes.js";
