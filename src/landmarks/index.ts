export {
  type BrowDots,
  type CompleteDots,
  type Dot,
  DOT_NAMES,
  DOTS,
  PLACED_DOTS,
} from "./face/brow-dots.js";
export { correctIrises } from "./markups/correct-irises.js";
export type { Declared } from "./face/declared.js";
export {
  type BeyondMarkup,
  describeMarkup,
  type MarkupDescription,
} from "./markups/describe-markup.js";
export { enlargeSkin } from "./skin/enlarge-skin.js";
export { atEyeCorner } from "./skin/eye-corner.js";
export type {
  Brow,
  Face,
  FaceSide,
  FaceWith,
  LandmarkSource,
  LandmarkUncertainty,
  MidlineLandmarks,
  SidePoints,
  SymmetricPoints,
  StandIn,
} from "./face/face.js";
export {
  ARCH_CONVENTIONS,
  type ArchConvention,
  BROW_ARCHES,
  type BrowArch,
  conventionWords,
  type GuideConvention,
  type GuideRule,
  GUIDES,
  isConvention,
  isGuide,
  type Mark,
  START_CONVENTIONS,
  type StartConvention,
  TAIL_CONVENTIONS,
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
  MIDLINE_LANDMARKS,
  type MidlineLandmark,
  type PointLandmark,
  SIDE_LANDMARKS,
  type SideLandmark,
} from "./face/landmarks.js";
export { BY_HAND, landmarkUncertainty } from "./face/landmark-uncertainty.js";
export { mapBrow, mapFace, type PointMap } from "./face/map-face.js";
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
  MARKUP_NAMES,
  type MarkupLandmarks,
  type MarkupName,
  type MarkupPoint,
  type MarkupPoints,
  MARKUPS,
} from "./markups/markups.js";
export { amountOf } from "./face/amount-of.js";
export {
  FACE_MEASURE_NAMES,
  type FaceMeasureName,
  type FaceMeasures,
  type KindOfMeasure,
  kindOf,
  MEASURE_KINDS,
  MEASURE_NAMES,
  type MeasureKind,
  type MeasureName,
  MEASURES,
  MEASURES_ON_BORDERS,
  READABLE_MEASURES,
  type ReadableMeasure,
  type SideMeasures,
} from "./face/measures.js";
export { toleranceFor } from "./face/tolerance-for.js";
export { requireLandmarks } from "./face/require-landmarks.js";
export { lengthBetween, lengthOf, lengthOfPath, type LengthOptions } from "./skin/skin-length.js";
export { skinOf } from "./skin/skin-of.js";
export { deepen, skinUncertainty } from "./skin/skin-uncertainty.js";
export { depthAt, type FittedSkin, onSkin, type Skin, type SkinCurve } from "./skin/skin.js";
export type { FaceNoteCode } from "./face/words.js";
