export { toDegrees, toRadians } from "./quantities/angle.js";
export { chiSquareQuantile, normalDistribution } from "./uncertainty/normal-distribution.js";
export { normalQuantile } from "./uncertainty/normal-distribution.js";
export { DECISION_RULES, decisionOn, OUTCOMES } from "./decisions/decision.js";
export { requireFinite, requireFinitePoint, requireObject } from "./quantities/require.js";
export { requirePolyline, requirePositive, requireWithin } from "./quantities/require.js";
export { requireFlag, requireNames, requireWord } from "./quantities/require.js";
export {
  refuse,
  refusingAs,
  shownValue,
  unlessRefused,
  writtenPath,
} from "./quantities/geometry-error.js";
export { SCALE_SOURCES } from "./uncertainty/scale-source.js";
export { measuredAs, requireUncertainty } from "./uncertainty/measured.js";
export { keysOf } from "./quantities/keys-of.js";
export { type CodeOf, type NoteMaker, noteMaker } from "./quantities/note.js";
export type { Given, NoValues, Numbers } from "./quantities/note.js";
export { writtenLength } from "./quantities/parse-length.js";
export { SIDES } from "./quantities/side.js";
export { ADVICE_CODES, type AdviceNotes } from "./decisions/notes.js";
export {
  CLIENTS_NOTICE,
  NOTICED_CANT,
  NOTICED_DEVIATION,
  OTHERS_NOTICE,
} from "./decisions/tolerances.js";
export { decideUnder, TOLERANCE_UNITS, within } from "./decisions/tolerances.js";
export { SCALE_NOTE_CODES, scaleNote } from "./uncertainty/notes.js";
export type { ScaleNoteParts, ScaleNotes } from "./uncertainty/notes.js";
