export {
  compareSides,
  type ComparisonOptions,
  type SideComparison,
  type SideDifference,
} from "./compare-sides.js";
export { faceFrame, type FaceFrame, type FaceFrameOptions } from "./face-frame.js";
export { fitMidline, type MidlineOptions } from "./fit-midline.js";
export type { Midline, MidlineMethod, MirroredLandmark, OtherMidline } from "./midline.js";
export type { GivenPoints } from "./midline-methods.js";
export { FACE_MIDLINE, mirror } from "./mirror.js";
export { toFace } from "./to-face.js";
export { toPhoto } from "./to-photo.js";
