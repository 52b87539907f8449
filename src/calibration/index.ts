export type { ReferenceDepth } from "./reference-depth.js";
export { IRIS_WIDTH, type IrisOptions, scaleFromIris } from "./scale-from-iris.js";
export { type ReferenceOptions, scaleFromReference } from "./scale-from-reference.js";
