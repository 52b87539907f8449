import type { CodeOf } from "../../units/internal.js";

export const FACE_NOTE_CODES = [
  "sides-swapped",
  "irises-swapped",
  "mirroring-undone",
  "scaled-to-pixels",
  "point-missing",
  "point-misplaced",
  "stand-in",
  "irises-narrowed",
  "corrected",
  "repeated-points",
] as const;

/** Codes of the notes that a face may carry. */
export type FaceNoteCode = CodeOf<typeof FACE_NOTE_CODES, typeof FACE_NOTES>;

/** What was done to a face on the way in, and what is missing in it. */
export const FACE_NOTES = {
  "sides-swapped": "The detector saw a flipped picture: its right and left were exchanged.",
  "irises-swapped": "Each iris lay in the other eye; they were exchanged.",
  "mirroring-undone": "The picture was flipped sideways; points lie in the picture as taken.",
  "scaled-to-pixels":
    "Coordinates were shares of a picture {width} wide and {height} high; they are pixels now.",
  "point-missing": "{landmark} is not complete: point {points} of the markup is missing.",
  "point-misplaced": "{landmark} is left out: its point does not lie where it should.",
  "stand-in": "{landmark} is only approximated: {instead}.",
  "irises-narrowed":
    "The source draws irises {factor:2} ± {u:2} times as wide as they are: their edges were moved together.",
  corrected: "The average errors of its detector were taken out.",
  "repeated-points": "{landmark} repeats points, {count} too many: once is enough.",
} as const;
