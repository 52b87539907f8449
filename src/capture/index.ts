export type { CaptureOptions } from "./capture.js";
export { checkCapture } from "./check-capture.js";
export type { CaptureCheck, Finding, FindingSeverity } from "./finding.js";
export { headPose, type HeadPose } from "./head-pose.js";
export { CAPTURE_LIMITS } from "./limits.js";
export type { CaptureLimit, CaptureLimits, CapturePurpose, LimitedCheck } from "./limits.js";
export type { FindingCode } from "./notes.js";
