export { combineScales } from "./combine-scales.js";
export {
  fitRuler,
  type RulerFit,
  type RulerMark,
  type RulerOptions,
  scaleFromRuler,
} from "./fit-ruler.js";
export {
  measuresFromReadings,
  type Reading,
  type ReadingSheet,
  type SheetOptions,
  type SideReadingSheet,
} from "./measures-from-readings.js";
export type { ReferenceDepth, ReferenceOptions } from "./reference-depth.js";
export { IRIS_WIDTH, type IrisOptions, scaleFromIris } from "./scale-from-iris.js";
export { type MarkerOptions, scaleFromMarker } from "./scale-from-marker.js";
export { scaleFromReference } from "./scale-from-reference.js";
