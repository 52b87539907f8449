export { toDegrees, toRadians } from "./angle.js";
export { averageOf } from "./average-of.js";
export { chiSquareQuantile } from "./chi-square.js";
export type { Correlation } from "./correlation.js";
export {
  type AdviceCode,
  decide,
  type Decision,
  type DecisionOptions,
  type DecisionRule,
  type Limits,
  type Outcome,
} from "./decide.js";
export {
  requireFinite,
  requireFinitePoint,
  requirePolyline,
  requirePositive,
  requireWithin,
} from "./finite.js";
export { formatLength } from "./format-length.js";
export {
  GeometryError,
  type GeometryErrorCode,
  type GeometryErrorDetail,
} from "./geometry-error.js";
export type { InputComponent, MeasuredInputs, PlainValues } from "./measured-inputs.js";
export {
  type Measured,
  measured,
  type MeasuredPoint,
  measuredPoint,
  type PointUncertainty,
  requireUncertainty,
} from "./measured.js";
export { normalDistribution, normalQuantile } from "./normal-distribution.js";
export { type Note, note, type NoteValues } from "./note.js";
export { parseLength } from "./parse-length.js";
export {
  type Drawn,
  type DrawOptions,
  type Interval,
  type IntervalsOf,
  propagateByDraws,
} from "./propagate-by-draws.js";
export { type Propagated, propagate, type PropagationOptions } from "./propagate.js";
export {
  type DeepPoint,
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type In,
  type Length,
  length,
  mm,
  type Point,
  type Polyline,
  px,
  type Unit,
} from "./quantity.js";
export { readCaliper, type ReadingOptions, readRuler } from "./read-ruler.js";
export { requireObject } from "./require-object.js";
export { requireWord } from "./require-word.js";
export type { MeasureResult, ResultPart, UncertaintyOf } from "./result-components.js";
export {
  type Scale,
  type ScaleNoteCode,
  type ScaleSource,
  toMillimetres,
  toPixels,
} from "./scale.js";
export { eachSide, otherSide, type Side, type Sides } from "./side.js";
export {
  NOTICED_BY_CLIENTS,
  NOTICED_BY_OTHERS,
  type Tolerance,
  type ToleranceName,
  type ToleranceSet,
  type ToleranceSetWith,
  WORKING_TOLERANCES,
} from "./tolerances.js";
