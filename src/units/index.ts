export { toDegrees, toRadians } from "./angle.js";
export { requireFinite, requireFinitePoint, requirePolyline, requirePositive } from "./finite.js";
export {
  GeometryError,
  type GeometryErrorCode,
  type GeometryErrorDetail,
} from "./geometry-error.js";
export { type Measured, measured } from "./measured.js";
export { normalDistribution, normalQuantile } from "./normal-distribution.js";
export { type Note, note, type NoteValues } from "./note.js";
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
export {
  type Scale,
  type ScaleNoteCode,
  type ScaleSource,
  toMillimetres,
  toPixels,
} from "./scale.js";
export { eachSide, otherSide, type Side, type Sides } from "./side.js";
