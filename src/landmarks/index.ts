export { type BrowMarks, type CompleteMarks, type Dot, DOTS } from "./brow-marks.js";
export { correctIrises } from "./correct-irises.js";
export type { Declared } from "./declared.js";
export {
  type BeyondMarkup,
  describeMarkup,
  MARKUP_NAMES,
  type MarkupDescription,
} from "./describe-markup.js";
export { enlargeSkin } from "./enlarge-skin.js";
export { atEyeCorner } from "./eye-corner.js";
export type {
  Brow,
  Face,
  FaceNoteCode,
  FaceSide,
  FaceWith,
  LandmarkName,
  LandmarkSource,
  LandmarkUncertainty,
  MidlineLandmark,
  MidlineLandmarks,
  PairedPoints,
  SideLandmark,
  StandIn,
} from "./face.js";
export { fromCocoWholeBody } from "./from-coco-wholebody.js";
export {
  fromLandmarks,
  type LandmarkNames,
  type NamedPoints,
  type PointName,
  type SideNames,
} from "./from-landmarks.js";
export { fromMesh478 } from "./from-mesh478.js";
export {
  type AxisDirection,
  faceFromMillimetres,
  type MillimetreAxes,
  type MillimetreOptions,
  type PlainFace,
  type PlainPoint,
  type PlainSide,
} from "./from-millimetres.js";
export { fromPoints68 } from "./from-points68.js";
export { fromPoints98 } from "./from-points98.js";
export { MIDLINE_LANDMARKS } from "./landmark-names.js";
export { BY_HAND, landmarkUncertainty } from "./landmark-uncertainty.js";
export { mapBrow, mapFace, type PointMap } from "./map-face.js";
export type {
  ImageSize,
  MarkupOptions,
  MarkupPicture,
  Mirroring,
  SourceOptions,
} from "./markup-options.js";
export type { MarkupPoint, MarkupPoints } from "./markup-points.js";
export type { MarkupName } from "./markup.js";
export type { FaceMeasures, MeasureName, SideMeasures } from "./measures.js";
export type { MeshAlare } from "./mesh-markup.js";
export type { NostrilAlare } from "./points68-markup.js";
export type { NoseBaseAlare } from "./points98-markup.js";
export { requireLandmarks } from "./require-landmarks.js";
export { lengthBetween, lengthOf, lengthOfPath, type LengthOptions } from "./skin-length.js";
export { skinOf } from "./skin-of.js";
export { deepen, skinUncertainty } from "./skin-uncertainty.js";
export { depthAt, type FittedSkin, onSkin, type Skin, type SkinCurve } from "./skin.js";
