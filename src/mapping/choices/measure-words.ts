import type { MeasureName } from "../../landmarks/index.js";

/** What an artist calls what is read, as in "left front: 1 mm too long". */
export const MEASURE_WORDS: { readonly [Name in MeasureName | "startToStart"]: string } = {
  front: "front",
  tail: "tail",
  frontAlong: "front by tape",
  tailAlong: "tail by tape",
  frontOnPhoto: "front on the photo",
  tailOnPhoto: "tail on the photo",
  frontShare: "front share",
  startDistance: "start from the midline",
  archDistance: "arch from the midline",
  tailDistance: "tail end from the midline",
  startHeight: "height of the start",
  archHeight: "height of the arch",
  tailHeight: "height of the tail end",
  startThickness: "thickness at the start",
  bodyThickness: "thickness at the body",
  archThickness: "thickness at the arch",
  exocanthionToTailEnd: "outer eye corner to tail end",
  lidToBrow: "upper lid to brow",
  frontInclination: "slope of the front",
  browInclination: "slope of the brow",
  area: "area",
  startToStart: "start to start",
};
