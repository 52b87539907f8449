export {
  compareSides,
  type ComparisonOptions,
  type SideComparison,
  type SideDifference,
} from "./compare-sides.js";
export { faceFrame, type FaceFrame, type FaceFrameOptions } from "./face-frame.js";
export { type FaceMirrorPlane, fitMirrorPlane } from "./fit-mirror-plane.js";
export { fitMidline, type MidlineOptions } from "./fit-midline.js";
export type { Midline, MidlineMethod, MirroredLandmark, OtherMidline } from "./midline.js";
export type { GivenPoints } from "./midline-methods.js";
export { FACE_MIDLINE, mirror } from "./mirror.js";
export { type NoseDeviation, noseDeviation, type NoseOptions } from "./nose-deviation.js";
export { MEASURE_NAMES, toleranceFor } from "./tolerance-for.js";
export { toFace } from "./to-face.js";
export { toPhoto } from "./to-photo.js";
export { type TurnedFace, turnToFront } from "./turn-to-front.js";
export { type Turning, turningUncertainty } from "./turning.js";
