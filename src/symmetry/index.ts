export type { Camera } from "./frame/camera.js";
export type { CameraOptions } from "./frame/camera-of.js";
export {
  type CarriedBrow,
  carryBrow,
  type CarryOptions,
  type LeadingBrow,
} from "./mirroring/carry-brow.js";
export {
  type BorderComparison,
  type BorderDifference,
  compareBorders,
} from "./comparison/compare-borders.js";
export {
  type CaptureComparison,
  type CaptureComparisonOptions,
  compareCaptures,
  type Displacement,
  type DottedFace,
  type Way,
} from "./comparison/compare-captures.js";
export {
  compareSides,
  type ComparisonOptions,
  type SideComparison,
  type SideDifference,
} from "./comparison/compare-sides.js";
export { type EyeCant, eyeCant } from "./midline/eye-cant.js";
export { faceFrame, type FaceFrameOptions } from "./frame/face-frame.js";
export { type FaceFrame, toFace, toPhoto } from "./frame/frame.js";
export { fitMidline, type MidlineOptions } from "./midline/fit-midline.js";
export { fitMidsagittalPlane, type MidsagittalPlane } from "./frame/fit-midsagittal-plane.js";
export { type HalfFaces, halfFaces } from "./comparison/half-faces.js";
export type { Midline, MidlineMethod, OtherMidline } from "./midline/midline.js";
export type { GivenPoints } from "./midline/midline-methods.js";
export { FACE_MIDLINE, mirror } from "./mirroring/mirror.js";
export {
  type DeviationOptions,
  type NoseDeviation,
  noseDeviation,
} from "./midline/nose-deviation.js";
export { type ObjectSymmetry, objectSymmetry } from "./comparison/object-symmetry.js";
export type { Registration, StablePoint } from "./comparison/register-captures.js";
export { placeOnSide, pointOnSide, type SidePlace } from "./mirroring/side-place.js";
export { type TurnedFace, type TurningOptions, turnToFront } from "./frame/turn-to-front.js";
export { type Turning, turningUncertainty } from "./frame/turning.js";
export type { HalfFacesNoteCode, RegistrationNoteCode } from "./comparison/words.js";
