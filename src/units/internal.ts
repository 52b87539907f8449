export { toDegrees, toRadians } from "./quantities/angle.js";
export {
  chiSquareQuantile,
  normalDistribution,
  normalQuantile,
} from "./uncertainty/normal-distribution.js";
export { DECISION_RULES, OUTCOMES } from "./decisions/decide.js";
export {
  requireFinite,
  requireFinitePoint,
  requireObject,
  requirePolyline,
  requirePositive,
  requireWithin,
  requireWord,
} from "./quantities/require.js";
export { refuse, refusingAs, shownValue } from "./quantities/geometry-error.js";
export { SCALE_SOURCES } from "./uncertainty/scale.js";
export { requireUncertainty } from "./uncertainty/measured.js";
export { keysOf } from "./quantities/keys-of.js";
export { fill, note, type Sentences, type ValuesFor } from "./quantities/note.js";
export { writtenLength } from "./quantities/parse-length.js";
export { SIDES } from "./quantities/side.js";
export { decideUnder, TOLERANCE_UNITS } from "./decisions/tolerances.js";
export {
  DEPTH_NOTES,
  IRIS_NOTES,
  MARKER_NOTES,
  RULER_NOTES,
  SOURCES_NOTES,
} from "./uncertainty/words.js";
