export { BROW_PROMINENCE, type Camera } from "./camera.js";
export type { CameraOptions } from "./camera-of.js";
export { type CarriedBrow, carryBrow, type CarryOptions, type LeadingBrow } from "./carry-brow.js";
export { type BorderComparison, type BorderDifference, compareBorders } from "./compare-borders.js";
export {
  type CaptureComparison,
  type CaptureComparisonOptions,
  compareCaptures,
  type Displacement,
  type MarkedFace,
  type Way,
} from "./compare-captures.js";
export {
  compareSides,
  type ComparisonOptions,
  type SideComparison,
  type SideDifference,
} from "./compare-sides.js";
export { type EyeCant, eyeCant } from "./eye-cant.js";
export { faceFrame, type FaceFrame, type FaceFrameOptions } from "./face-frame.js";
export { fitMidline, type MidlineOptions } from "./fit-midline.js";
export { type FaceMirrorPlane, fitMirrorPlane } from "./fit-mirror-plane.js";
export { type HalfFaces, halfFaces, type HalfFacesNoteCode } from "./half-faces.js";
export {
  type LevelDot,
  levelHeights,
  type LevelledBrows,
  type LevelOptions,
  type LevelRule,
} from "./level-heights.js";
export type { Midline, MidlineMethod, MirroredLandmark, OtherMidline } from "./midline.js";
export type { GivenPoints } from "./midline-methods.js";
export { FACE_MIDLINE, mirror } from "./mirror.js";
export { type DeviationOptions, type NoseDeviation, noseDeviation } from "./nose-deviation.js";
export { type ObjectSymmetry, objectSymmetry } from "./object-symmetry.js";
export type { Registration, RegistrationNoteCode, StablePoint } from "./register-captures.js";
export { STABLE_LANDMARKS, type StableLandmark } from "./stable-landmarks.js";
export { PROFILE_LEAN } from "./pitch.js";
export { placeOnSide, pointOnSide, type SidePlace } from "./side-place.js";
export { toFace } from "./to-face.js";
export { toPhoto } from "./to-photo.js";
export { MEASURE_NAMES, toleranceFor } from "./tolerance-for.js";
export { type TurnedFace, turnToFront, type TurningOptions } from "./turn-to-front.js";
export { type Turning, type TurningError, turningShift, turningUncertainty } from "./turning.js";
