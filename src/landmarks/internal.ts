export { DOT_NAMES, PLACED_DOTS } from "./face/brow-dots.js";
export { atEyeCorner, deepen, numbersOf, onSkin, SET_BACK, POWERS, skinWith } from "./skin/skin.js";
export { skinsNear, usualSkin } from "./skin/skin-of.js";
export type { SkinWithSetBack } from "./skin/skin.js";
export { BROW_ARCHES, isGuide, MARKS } from "./face/conventions.js";
export { TAIL_CONVENTIONS } from "./face/conventions.js";
export type { GuideRule } from "./face/conventions.js";
export { LANDMARK_NAMES, MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "./face/landmarks.js";
export { FACE_NOTE_CODES, type FaceNotes } from "./face/notes.js";
export { errorSources } from "./errors/error-sources.js";
export type { KnownErrors } from "./errors/markup-errors.js";
export { type PointMoves, withMoves } from "./errors/point-moves.js";
export { BY_HAND } from "./face/face.js";
export { requirePair } from "./face/require-pair.js";
export { mapBrow } from "./face/map-face.js";
export { requireSideOrder } from "./face/side-order.js";
export { type FaceSense, leftIsPositive, senseOf, tiltOf } from "./face/sense-of-face.js";
export { MIRRORINGS } from "./markups/markup-options.js";
export { MARKUP_NAMES, type StandInCode } from "./markups/markups.js";
export type { BeyondNotes, Lacked } from "./markups/notes.js";
export type { LandmarkPath } from "./face/landmarks.js";
export { amountOf, FACE_MEASURE_NAMES, kindOf, measureKindOf } from "./face/measures.js";
export {
  MEASURE_NAMES,
  MEASURES_ON_BORDERS,
  READABLE_MEASURES,
  toleranceNameOf,
} from "./face/measures.js";
export type { KindOfMeasure, MeasureKind } from "./face/measures.js";
export { byRuler, lengthOfCurve, type Tape, tapeOn } from "./skin/skin-length.js";
