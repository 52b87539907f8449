export { archAtShare } from "./arch-at-share.js";
export type { BrowBorders } from "./brow-edge.js";
export { completeDots, type Station, type StationThickness } from "./complete-dots.js";
export { frontShare } from "./front-share.js";
export { type FaceForGuide, type Guide, guideLine, type GuideOptions } from "./guide-line.js";
export { measureFace, measureSide, type SideContext } from "./measure-side.js";
export { meetGuide } from "./meet-guide.js";
export type { NaturalArch } from "./natural-arch.js";
export { naturalDots, type NaturalDots, type NaturalDotsOptions } from "./natural-dots.js";
export { naturalOutline } from "./natural-outline.js";
export {
  outlineArea,
  outlineBorders,
  type OutlineOverlap,
  outlinePath,
  overlapOutlines,
} from "./outline-path.js";
export { outline, type Outline, type OutlineDots } from "./outline.js";
export type { OutlineOptions, UpperBorderShape } from "./outline-shape.js";
export { thickness, type ThicknessDirection, type ThicknessReading } from "./thickness.js";
export type { UpperDots } from "./upper-border.js";
