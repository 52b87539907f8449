export { DOT_NAMES, PLACED_DOTS } from "./face/brow-dots.js";
export { atEyeCorner, deepen, enlargeSkin, onSkin } from "./skin/skin.js";
export {
  BROW_ARCHES,
  conventionWords,
  type GuideRule,
  isConvention,
  isGuide,
  MARKS,
  TAIL_CONVENTIONS,
} from "./face/conventions.js";
export { MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "./face/landmarks.js";
export { BY_HAND } from "./face/face.js";
export { mapBrow } from "./face/map-face.js";
export { MIRRORINGS } from "./markups/markup-options.js";
export { MARKUP_NAMES } from "./markups/markups.js";
export {
  amountOf,
  FACE_MEASURE_NAMES,
  kindOf,
  type KindOfMeasure,
  MEASURE_NAMES,
  type MeasureKind,
  MEASURES_ON_BORDERS,
  READABLE_MEASURES,
} from "./face/measures.js";
