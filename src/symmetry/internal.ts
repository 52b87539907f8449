export { BROW_PROMINENCE } from "./frame/camera.js";
export { MIDLINE_METHODS } from "./midline/midline.js";
export { mapDots } from "./mirroring/shape.js";
export { STABLE_LANDMARKS } from "./comparison/stable-landmarks.js";
export { PROFILE_LEAN } from "./frame/pitch.js";
export { type TurningOffset, turningShift } from "./frame/turning.js";
