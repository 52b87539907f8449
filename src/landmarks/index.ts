export { type BrowDots, type CompleteDots, type Dot, DOTS } from "./face/brow-dots.js";
export { correctIrises } from "./markups/correct-irises.js";
export type { Declared } from "./face/declared.js";
export {
  type BeyondMarkup,
  describeMarkup,
  type MarkupDescription,
} from "./markups/describe-markup.js";
export type {
  Brow,
  Face,
  FaceSide,
  FaceWith,
  LandmarkSource,
  LandmarkUncertainty,
  MidlineLandmarks,
  SidePoints,
  StandIn,
  SymmetricPoints,
} from "./face/face.js";
export {
  ARCH_CONVENTIONS,
  type ArchConvention,
  type BrowArch,
  type GuideConvention,
  GUIDES,
  type Mark,
  START_CONVENTIONS,
  type StartConvention,
  type TailConvention,
} from "./face/conventions.js";
export {
  fromLandmarks,
  type LandmarkNames,
  type NamedPoints,
  type PointName,
  type SideNames,
} from "./markups/from-landmarks.js";
export { fromMarkup } from "./markups/from-markup.js";
export {
  type AxisDirection,
  faceFromMillimetres,
  type MillimetreAxes,
  type MillimetreOptions,
  type PlainFace,
  type PlainPoint,
  type PlainSide,
} from "./markups/from-millimetres.js";
export {
  type LandmarkName,
  LANDMARKS,
  type MidlineLandmark,
  type PointLandmark,
  type SideLandmark,
} from "./face/landmarks.js";
export { landmarkUncertainty } from "./face/landmark-uncertainty.js";
export { mapFace, type PointMap } from "./face/map-face.js";
export type {
  ImageSize,
  MarkupOptions,
  MarkupPicture,
  Mirroring,
  SourceOptions,
} from "./markups/markup-options.js";
export {
  type AlareChoice,
  type LandmarkForms,
  type MarkupLandmarks,
  type MarkupName,
  type MarkupPoint,
  type MarkupPoints,
  MARKUPS,
} from "./markups/markups.js";
export {
  type FaceMeasureName,
  type FaceMeasures,
  MEASURE_KINDS,
  type MeasureName,
  MEASURES,
  type ReadableMeasure,
  type SideMeasures,
} from "./face/measures.js";
export { toleranceFor } from "./face/tolerance-for.js";
export { requireLandmarks } from "./face/require-landmarks.js";
export { lengthBetween, lengthOf, lengthOfPath, type LengthOptions } from "./skin/skin-length.js";
export { skinOf } from "./skin/skin-of.js";
export { skinUncertainty } from "./skin/skin-uncertainty.js";
export { depthAt, type FittedSkin, type Skin, type SkinCurve } from "./skin/skin.js";
export type { FaceNoteCode } from "./face/words.js";
