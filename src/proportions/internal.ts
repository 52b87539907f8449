export { bodyOf, STATION_THICKNESS, STATIONS } from "./complete-dots.js";
export { browCurves } from "./brow-curves.js";
export { type BrowEdge, edgeOfCurves, edgeOfDots, edgeOfHair } from "./brow-edge.js";
export { readFromEye, readSide, type SideReading, type SideToRead } from "./read-side.js";
export { ARCH_EYE_WIDTH_SHARE, requireGuideLandmarks, sightLine } from "./guide-line.js";
export { mapOutline } from "./outline-path.js";
export { requireShape, SHAPES } from "./outline-shape.js";
export { meetSight } from "./meet-guide.js";
export { dotsAnew } from "./natural-dots.js";
