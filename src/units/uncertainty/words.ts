import type { CodeOf } from "../quantities/note.js";

export const SCALE_NOTE_CODES = [
  "population-average",
  "ring-factor",
  "one-iris",
  "irises-differ",
  "perspective-unknown",
  "perspective-corrected",
  "reference-off-plane",
  "ruler-recedes",
  "marker-tilted",
  "reading-rejected",
  "readings-scatter",
  "rim-scatters",
  "sources-disagree",
] as const;

/** Codes of the notes that a scale may carry. */
export type ScaleNoteCode = CodeOf<
  typeof SCALE_NOTE_CODES,
  typeof IRIS_NOTES &
    typeof DEPTH_NOTES &
    typeof RULER_NOTES &
    typeof MARKER_NOTES &
    typeof SOURCES_NOTES
>;

// A table for each source of a scale: an app that uses one does not carry the sentences of the others.

/** What a scale by iris says of how it was found. */
export const IRIS_NOTES = {
  "population-average":
    "The iris is taken to be {width} ± {u} mm wide, the average of the population: that alone makes every length uncertain by {percent:0} %. Shares and angles do not depend on it.",
  "ring-factor":
    "The source draws irises {factor:2} ± {u:2} times as wide as they are: the scale is corrected for it.",
  "one-iris": "Only the {side} iris was measured.",
  "irises-differ":
    "The right iris is {right:1} px wide and the left one {left:1} px, more apart than their placement explains: the head may be turned. The mean is used, with half the difference as its uncertainty.",
  "perspective-unknown":
    "The start of a brow is nearer to the camera than the iris and its tail end farther away: from {distance:0} mm they read {start:1} % too large and {tail:1} % too small.",
  "perspective-corrected":
    "The camera was {distance:0} mm away: its perspective is removed, by depth or, where a brow has none, by the modelled skin.",
} as const;

/** What a scale says of a reference that lies off the plane of what is measured. */
export const DEPTH_NOTES = {
  "reference-off-plane":
    "The reference lies {nearer:1} mm nearer to the camera, which is {distance:0} mm away, than what is measured: lengths are corrected for it.",
} as const;

/** What a scale says of its ruler. */
export const RULER_NOTES = {
  "ruler-recedes":
    "The ruler recedes from the camera: a millimetre is {first:2} px at one end and {last:2} px at the other. The scale of its middle is used; hold it level.",
  "reading-rejected":
    "The reading of {reading} mm does not fit the others, which give {expected:1} mm: it was left out.",
  "readings-scatter":
    "The readings scatter {times:1} times as much as the placement of their marks explains: the uncertainty was widened.",
} as const;

/** What a scale says of its marker. */
export const MARKER_NOTES = {
  "marker-tilted": "The marker is tilted by about {tilt:0}°: its longer axis is used.",
  "rim-scatters":
    "The points of the rim lie {times:1} times as far off a circle as their placement explains: the uncertainty was widened.",
} as const;

/** What a scale says of the scales that it combines. */
export const SOURCES_NOTES = {
  "sources-disagree":
    "The scales differ by more than their uncertainties allow ({scales} mm per pixel): at least one is wrong. The uncertainty was widened to cover them.",
} as const;
