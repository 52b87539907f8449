export { toDegrees, toRadians } from "./quantities/angle.js";
export { averageOf } from "./uncertainty/average-of.js";
export { chiSquareQuantile } from "./uncertainty/chi-square.js";
export type { Correlation } from "./uncertainty/correlation.js";
export {
  decide,
  type Decision,
  type DecisionOptions,
  DECISION_RULES,
  type DecisionRule,
  type Limits,
  type Outcome,
  OUTCOMES,
} from "./decisions/decide.js";
export {
  requireFinite,
  requireFinitePoint,
  requirePolyline,
  requirePositive,
  requireWithin,
} from "./quantities/finite.js";
export { formatLength } from "./quantities/format-length.js";
export {
  GeometryError,
  type GeometryErrorCode,
  type GeometryErrorDetail,
  shownValue,
} from "./quantities/geometry-error.js";
export type { InputComponent, MeasuredInputs, PlainValues } from "./uncertainty/measured-inputs.js";
export {
  type Measured,
  measured,
  type MeasuredPoint,
  measuredPoint,
  type PointUncertainty,
  requireUncertainty,
} from "./uncertainty/measured.js";
export { keysOf } from "./quantities/keys-of.js";
export { normalDistribution, normalQuantile } from "./uncertainty/normal-distribution.js";
export {
  fill,
  type Note,
  note,
  type NoteValues,
  type Sentences,
  type ValuesFor,
} from "./quantities/note.js";
export { parseLength } from "./quantities/parse-length.js";
export {
  type MonteCarloResult,
  type MonteCarloOptions,
  type Interval,
  type IntervalsOf,
  propagateByMonteCarlo,
} from "./uncertainty/propagate-by-monte-carlo.js";
export { type Propagated, propagate, type PropagationOptions } from "./uncertainty/propagate.js";
export {
  type DeepPoint,
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type UnitTag,
  type Length,
  length,
  mm,
  type Point,
  type Polyline,
  px,
  type Unit,
} from "./quantities/quantity.js";
export { readCaliper, type ReadingOptions, readRuler } from "./uncertainty/read-ruler.js";
export { refusingAs } from "./quantities/refusing-as.js";
export { requireObject } from "./quantities/require-object.js";
export { requireWord } from "./quantities/require-word.js";
export type { MeasureResult, ResultPart, UncertaintyOf } from "./uncertainty/result-components.js";
export { type Scale, type ScaleSource, toMillimetres, toPixels } from "./uncertainty/scale.js";
export { eachSide, otherSide, type Side, type Sides } from "./quantities/side.js";
export { decideUnder } from "./decisions/decide-under.js";
export {
  NOTICED_BY_CLIENTS,
  NOTICED_BY_OTHERS,
  TOLERANCE_UNITS,
  type Tolerance,
  type ToleranceName,
  type ToleranceSet,
  type ToleranceSetWith,
  WORKING_TOLERANCES,
} from "./decisions/tolerances.js";
export { SCALE_NOTES, type ScaleNoteCode } from "./uncertainty/words.js";
export type { AdviceCode } from "./decisions/words.js";
