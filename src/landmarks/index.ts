export { type BrowDots, type CompleteDots, type Dot, DOTS } from "./face/brow-dots.js";
export { correctIrises } from "./markups/correct-irises.js";
export {
  type Brow,
  type Declared,
  type Face,
  type FaceSide,
  type FaceWith,
  type LandmarkSource,
  landmarkUncertainty,
  type LandmarkUncertainty,
  type MidlineLandmarks,
  type SidePoints,
  type StandIn,
  type SymmetricPoints,
} from "./face/face.js";
export {
  type BeyondMarkup,
  describeMarkup,
  type MarkupDescription,
} from "./markups/describe-markup.js";
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
  toleranceFor,
} from "./face/measures.js";
export { requireLandmarks } from "./face/require-landmarks.js";
export { lengthBetween, lengthOf, lengthOfPath, type LengthOptions } from "./skin/skin-length.js";
export { skinOf } from "./skin/skin-of.js";
export {
  depthAt,
  type FittedSkin,
  type Skin,
  type SkinCurve,
  skinUncertainty,
} from "./skin/skin.js";
export type { FaceNoteCode } from "./face/words.js";
