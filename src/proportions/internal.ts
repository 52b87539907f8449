export { STATION_THICKNESS } from "./complete-dots.js";
export { ARCH_EYE_WIDTH_SHARE } from "./guide-line.js";
export { mapOutline } from "./outline-path.js";
export { requireShape, SHAPES } from "./outline-shape.js";
export { requireGuideLandmarks } from "./require-guide-landmarks.js";
export { STATIONS } from "./stations.js";
