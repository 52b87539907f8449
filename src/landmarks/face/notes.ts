import { type CodeOf, type NoteMaker, noteMaker } from "../../units/internal.js";
import type { NoValues, Numbers } from "../../units/internal.js";

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
export type FaceNoteCode = CodeOf<typeof FACE_NOTE_CODES, FaceNotes>;

/** A landmark, or a line of a side, by its path: `"right.alare"`, `"left.brow.upper"`. */
interface OfLandmark {
  readonly landmark: string;
}

/** What was done to a face on the way in, and what is missing in it. */
export interface FaceNotes {
  readonly "sides-swapped": NoValues;
  readonly "irises-swapped": NoValues;
  readonly "mirroring-undone": NoValues;
  readonly "scaled-to-pixels": Numbers<"width" | "height">;
  readonly "point-missing": OfLandmark & { readonly points: string };
  readonly "point-misplaced": OfLandmark;
  readonly "stand-in": OfLandmark & { readonly instead: string };
  readonly "irises-narrowed": Numbers<"factor" | "u">;
  readonly corrected: NoValues;
  readonly "repeated-points": OfLandmark & Numbers<"count">;
}

export const faceNote: NoteMaker<FaceNotes> = /* @__PURE__ */ noteMaker();
