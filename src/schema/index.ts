export { choicesSchema, parseChoices } from "./choices.js";
export { faceSchema, parseFace } from "./face.js";
export {
  type DetectedLandmarks,
  type LandmarkFile,
  type LandmarkFileContext,
  landmarkFileSchema,
  type LengthReference,
  type NamedLandmarks,
  parseLandmarkFile,
} from "./landmark-file.js";
export { parsePlan, planSchema } from "./plan.js";
export { parseReadingSheet, readingSheetSchema } from "./reading-sheet.js";
export { parseRecord, recordJsonSchema, recordSchema } from "./record.js";
export { parseRubric, rubricSchema } from "./rubric.js";
export type { Schema } from "./schema.js";
export { parseToleranceSet, toleranceSetSchema } from "./tolerance-set.js";
