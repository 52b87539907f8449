import { type CodeOf, type Note, type NoteMaker, noteMaker } from "../quantities/note.js";
import type { Numbers } from "../quantities/note.js";
import type { Side } from "../quantities/side.js";
import type { ScaleSource } from "./scale-source.js";

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
export type ScaleNoteCode = CodeOf<typeof SCALE_NOTE_CODES, ScaleNotes>;

/** What a scale says of how it was found, each with its values. */
export interface ScaleNotes {
  readonly "population-average": Numbers<"width" | "u" | "percent">;
  readonly "ring-factor": Numbers<"factor" | "u">;
  readonly "one-iris": { readonly side: Side };
  /** In pixels. */
  readonly "irises-differ": Numbers<"right" | "left">;
  /** At that distance, how much too large a start reads and how much too small a tail, in percent. */
  readonly "perspective-unknown": Numbers<"distance" | "start" | "tail">;
  readonly "perspective-corrected": Numbers<"distance">;
  readonly "reference-off-plane": Numbers<"nearer" | "distance">;
  /** Pixels to a millimetre at both ends. */
  readonly "ruler-recedes": Numbers<"first" | "last">;
  /** In degrees. */
  readonly "marker-tilted": Numbers<"tilt">;
  readonly "reading-rejected": Numbers<"reading" | "expected">;
  readonly "readings-scatter": Numbers<"times">;
  readonly "rim-scatters": Numbers<"times">;
  readonly "sources-disagree": { readonly scales: readonly Note<"scale-of-source">[] };
}

/** What notes of a scale hold within them. */
export interface ScaleNoteParts {
  /** In mm a pixel. */
  readonly "scale-of-source": { readonly source: ScaleSource } & Numbers<"factor" | "u">;
}

export const scaleNote: NoteMaker<ScaleNotes & ScaleNoteParts> = /* @__PURE__ */ noteMaker();
