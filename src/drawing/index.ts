export { drawPlan, type PhotoBeneath, type PlanDrawing } from "./draw-plan.js";
export { drawSheet, type SheetDrawing } from "./draw-sheet.js";
export { drawStrip, type StripDrawing } from "./draw-strip.js";
export type { Theme } from "./palette.js";
export type { Paper } from "./paper.js";
export type { SheetField } from "./text-blocks.js";
