export { BROW_PROMINENCE } from "./frame/camera.js";
export { MIDLINE_METHODS } from "./midline/midline.js";
export { mapDots } from "./mirroring/shape.js";
export { WAYS } from "./comparison/words.js";
export { STABLE_LANDMARKS } from "./comparison/register-captures.js";
export { PROFILE_LEAN, type TurningOffset, turningShift } from "./frame/turning.js";
export { intoSpace, spaceOf, type SpaceShift } from "./midline/space-shift.js";
export { MIDLINE_PAIRS, MIDLINE_POINTS } from "./midline/mirror-pairs.js";
