export { STATION_THICKNESS, STATIONS } from "./complete-dots.js";
export { browCurves } from "./brow-curves.js";
export { type BrowEdge, edgeOfCurves, edgeOfDots, edgeOfHair } from "./brow-edge.js";
export { readSide, type SideReading } from "./read-side.js";
export { ARCH_EYE_WIDTH_SHARE, requireGuideLandmarks } from "./guide-line.js";
export { mapOutline } from "./outline-path.js";
export { requireShape, SHAPES } from "./outline-shape.js";
