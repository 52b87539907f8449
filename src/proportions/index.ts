export { archAtShare } from "./arch-at-share.js";
export { ARCH_EYE_WIDTH_SHARE, archGuide, type ArchGuideOptions } from "./arch-guide.js";
export { frontShare } from "./front-share.js";
export {
  type ArchConvention,
  type ArchGuideConvention,
  type FaceForGuide,
  type Guide,
  GUIDE_LANDMARKS,
  type GuideConvention,
  type StartConvention,
  type TailConvention,
} from "./guide.js";
export { measureFace } from "./measure-face.js";
export { measureSide, type SideContext } from "./measure-side.js";
export { meetGuide } from "./meet-guide.js";
export type { NaturalArch } from "./natural-arch.js";
export { naturalMarks, type NaturalMarks, type NaturalMarksOptions } from "./natural-marks.js";
export { requireGuideLandmarks } from "./require-guide-landmarks.js";
export { startGuide } from "./start-guide.js";
export { tailGuide } from "./tail-guide.js";
export { thickness, type ThicknessDirection, type ThicknessReading } from "./thickness.js";
