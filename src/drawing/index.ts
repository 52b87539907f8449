export type { NamedCapture } from "./capture-panel.js";
export { drawCaptures } from "./draw-captures.js";
export { drawPlan, type PhotoBeneath, type PlanDrawing } from "./draw-plan.js";
export { drawSheet, type SheetDrawing } from "./draw-sheet.js";
export { drawStrip } from "./draw-strip.js";
export type { Look } from "./look.js";
export type { Theme } from "./palette.js";
export type { Paper } from "./paper.js";
export type { SheetField } from "./text-blocks.js";
