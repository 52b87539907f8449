import type { Terms } from "../catalogue/terms.js";

/** What an artist calls dots, measures and the rules that place dots. */
export const BROW_TERMS: Pick<
  Terms,
  | "dots"
  | "marks"
  | "stations"
  | "measures"
  | "tooMuch"
  | "tooLittle"
  | "rules"
  | "tailHeights"
  | "archLimits"
> = {
  dots: {
    upperStart: "start",
    upperBody: "body",
    upperArch: "arch",
    tailEnd: "tail end",
    lowerStart: "lower start",
    lowerBody: "lower body",
    lowerArch: "lower arch",
  },
  marks: { start: "start", arch: "arch", tail: "tail end" },
  stations: { start: "start", body: "body", arch: "arch" },
  measures: {
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
  },
  tooMuch: {
    length: "too long",
    gap: "too wide",
    distance: "too far out",
    height: "too high",
    thickness: "too thick",
    share: "too much",
    slope: "too far up",
    area: "too large",
  },
  tooLittle: {
    length: "too short",
    gap: "too narrow",
    distance: "too far in",
    height: "too low",
    thickness: "too thin",
    share: "too little",
    slope: "too far down",
    area: "too small",
  },
  rules: {
    natural: "where it grows",
    "brow-length-share": "at two thirds by ruler, or the share chosen",
    "alare-vertical": "above the nose wing",
    "endocanthion-vertical": "above the inner eye corner",
    "lateral-limbus-vertical": "above the outer edge of the iris",
    "alare-through-pupil": "on the line from the nose wing through the pupil",
    "eye-width-share": "at a share of the eye’s width",
    "exocanthion-vertical": "above the outer eye corner",
    "alare-through-lateral-limbus":
      "on the line from the nose wing through the outer edge of the iris",
    "alare-through-exocanthion": "on the line from the nose wing through the outer eye corner",
  },
  tailHeights: {
    natural: "at the height of the brow there",
    "level-with-lower-start": "level with the lower start dot",
    "level-with-upper-start": "level with the upper start dot",
  },
  archLimits: {
    "lateral-limbus-vertical": "outer edge of the iris",
    "eye-width-share": "outer edge of the iris (taken at {0.75} eye widths)",
    "exocanthion-vertical": "outer eye corner",
  },
};
