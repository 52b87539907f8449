export { type BrowDots, type CompleteDots, type Dot, DOTS } from "./face/brow-dots.js";
export { correctIrises } from "./markups/correct-irises.js";
export { landmarkUncertainty } from "./face/face.js";
export type {
  Brow,
  Declared,
  Face,
  FaceSide,
  FaceWith,
  ImageSize,
  LandmarkSource,
} from "./face/face.js";
export type { LandmarkUncertainty, MidlineLandmarks, SidePoints, StandIn } from "./face/face.js";
export type { SymmetricPoints } from "./face/face.js";
export { describeMarkup } from "./markups/describe-markup.js";
export type { BeyondMarkup, MarkupDescription } from "./markups/describe-markup.js";
export { ARCH_CONVENTIONS, GUIDES, START_CONVENTIONS } from "./face/conventions.js";
export type { ArchConvention, BrowArch, GuideConvention, Mark } from "./face/conventions.js";
export type { StartConvention, TailConvention } from "./face/conventions.js";
export { fromLandmarks } from "./markups/from-landmarks.js";
export type { LandmarkNames, NamedPoints, PointName, SideNames } from "./markups/from-landmarks.js";
export { fromMarkup } from "./markups/from-markup.js";
export { faceFromMillimetres } from "./markups/from-millimetres.js";
export type { AxisDirection, MillimetreAxes } from "./markups/from-millimetres.js";
export type { MillimetreOptions, PlainFace, PlainPoint } from "./markups/from-millimetres.js";
export type { PlainSide } from "./markups/from-millimetres.js";
export { LANDMARKS } from "./face/landmarks.js";
export type { LandmarkName, MidlineLandmark, PointLandmark } from "./face/landmarks.js";
export type { SideLandmark } from "./face/landmarks.js";
export { mapFace, type PointMap } from "./face/map-face.js";
export type { MarkupOptions, MarkupPicture } from "./markups/markup-options.js";
export type { Mirroring, SourceOptions } from "./markups/markup-options.js";
export { MARKUPS } from "./markups/markups.js";
export type { AlareChoice, LandmarkForms, MarkupLandmarks, MarkupName } from "./markups/markups.js";
export type { MarkupPoint, MarkupPoints } from "./markups/markups.js";
export { MEASURE_KINDS, MEASURES, toleranceFor } from "./face/measures.js";
export type { FaceMeasureName, FaceMeasures, MeasureName } from "./face/measures.js";
export type { ReadableMeasure, SideMeasures } from "./face/measures.js";
export { requireLandmarks } from "./face/require-landmarks.js";
export { lengthBetween, lengthOf, lengthOfPath, type LengthOptions } from "./skin/skin-length.js";
export { skinOf } from "./skin/skin-of.js";
export { depthAt, skinUncertainty } from "./skin/skin.js";
export type { FittedSkin, Skin, SkinCurve } from "./skin/skin.js";
export type { FaceNoteCode } from "./face/notes.js";
