export { averageOf } from "./uncertainty/average-of.js";
export type { Correlation } from "./uncertainty/correlation.js";
export {
  decide,
  type Decision,
  type DecisionOptions,
  type DecisionRule,
  type Limits,
  type Outcome,
} from "./decisions/decide.js";
export { formatLength } from "./quantities/format-length.js";
export {
  GeometryError,
  type GeometryErrorCode,
  type GeometryErrorDetail,
} from "./quantities/geometry-error.js";
export type { InputComponent, MeasuredInputs, PlainValues } from "./uncertainty/measured-inputs.js";
export {
  type Measured,
  measured,
  type MeasuredPoint,
  measuredPoint,
  type PointUncertainty,
} from "./uncertainty/measured.js";
export type { Note, NoteValues } from "./quantities/note.js";
export { parseLength } from "./quantities/parse-length.js";
export {
  type Interval,
  type IntervalsOf,
  type MonteCarloOptions,
  type MonteCarloResult,
  propagateByMonteCarlo,
} from "./uncertainty/propagate-by-monte-carlo.js";
export { propagate, type Propagated, type PropagationOptions } from "./uncertainty/propagate.js";
export {
  type DeepPoint,
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type Length,
  length,
  mm,
  type Point,
  type Polyline,
  px,
  type Unit,
  type UnitTag,
} from "./quantities/quantity.js";
export { readCaliper, type ReadingOptions, readRuler } from "./uncertainty/read-ruler.js";
export type { MeasureResult, ResultPart, UncertaintyOf } from "./uncertainty/result-components.js";
export { type Scale, type ScaleSource, toMillimetres, toPixels } from "./uncertainty/scale.js";
export { eachSide, otherSide, type Side, type Sides } from "./quantities/side.js";
export {
  NOTICED_BY_CLIENTS,
  NOTICED_BY_OTHERS,
  type Tolerance,
  type ToleranceName,
  type ToleranceSet,
  type ToleranceSetWith,
  WORKING_TOLERANCES,
} from "./decisions/tolerances.js";
export type { ScaleNoteCode } from "./uncertainty/words.js";
export type { AdviceCode } from "./decisions/words.js";
