export { archAtShare } from "./arch-at-share.js";
export type { BrowBorders } from "./brow-edge.js";
export { completeDots, STATION_THICKNESS, type StationThickness } from "./complete-dots.js";
export { frontShare } from "./front-share.js";
export type { FaceForGuide, Guide } from "./guide.js";
export { ARCH_EYE_WIDTH_SHARE, guideLine, type GuideOptions } from "./guide-line.js";
export { measureFace } from "./measure-face.js";
export { measureSide, type SideContext } from "./measure-side.js";
export { meetGuide } from "./meet-guide.js";
export type { NaturalArch } from "./natural-arch.js";
export { naturalDots, type NaturalDots, type NaturalDotsOptions } from "./natural-dots.js";
export { naturalOutline } from "./natural-outline.js";
export { mapOutline, outlineArea, outlineBorders, outlinePath } from "./outline-path.js";
export { outline, type Outline, type OutlineDots } from "./outline.js";
export {
  type OutlineOptions,
  requireShape,
  SHAPES,
  type UpperBorderShape,
} from "./outline-shape.js";
export { type OutlineOverlap, overlapOutlines } from "./overlap-outlines.js";
export { requireGuideLandmarks } from "./require-guide-landmarks.js";
export { type Station, STATIONS } from "./stations.js";
export { thickness, type ThicknessDirection, type ThicknessReading } from "./thickness.js";
export type { UpperDots } from "./upper-border.js";
