export { archAtShare } from "./arch-at-share.js";
export { ARCH_EYE_WIDTH_SHARE, archGuide, type ArchGuideOptions } from "./arch-guide.js";
export type { BrowBorders } from "./brow-edge.js";
export { completeDots, STATION_THICKNESS, type StationThickness } from "./complete-dots.js";
export { frontShare } from "./front-share.js";
export {
  ARCH_CONVENTIONS,
  type ArchConvention,
  type ArchGuideConvention,
  type FaceForGuide,
  type Guide,
  GUIDE_LANDMARKS,
  type GuideConvention,
  START_CONVENTIONS,
  type StartConvention,
  type TailConvention,
} from "./guide.js";
export { measureFace } from "./measure-face.js";
export { measureSide, type SideContext } from "./measure-side.js";
export { meetGuide } from "./meet-guide.js";
export type { NaturalArch } from "./natural-arch.js";
export { naturalDots, type NaturalDots, type NaturalDotsOptions } from "./natural-dots.js";
export { naturalOutline } from "./natural-outline.js";
export { mapOutline, outlineArea, outlineBorders, outlinePath } from "./outline-path.js";
export { outline, type Outline, type OutlineDots, type OutlineOptions } from "./outline.js";
export { type OutlineOverlap, overlapOutlines } from "./overlap-outlines.js";
export { requireGuideLandmarks } from "./require-guide-landmarks.js";
export { startGuide } from "./start-guide.js";
export { tailGuide } from "./tail-guide.js";
export { thickness, type ThicknessDirection, type ThicknessReading } from "./thickness.js";
export type { UpperBorderShape, UpperDots } from "./upper-border.js";
