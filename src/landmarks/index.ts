export { type BrowMarks, type CompleteMarks, type Dot, DOTS } from "./brow-marks.js";
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
export { mapBrow, mapFace, type PointMap } from "./map-face.js";
export type { FaceMeasures, MeasureName, SideMeasures } from "./measures.js";
export { requireLandmarks } from "./require-landmarks.js";
