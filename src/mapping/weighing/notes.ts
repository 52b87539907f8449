import type { Dot, FaceMeasureName } from "../../landmarks/index.js";
import type { GeometryErrorCode, Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type NoValues, type Numbers } from "../../units/internal.js";

/** Codes of what is said about weighed choices. */
export type WeighingCode = keyof WeighingNotes;

interface OfSide {
  readonly side: Side;
}

/** What is said about weighed choices, each with its values. */
export interface WeighingNotes {
  readonly "same-landmarks": NoValues;
  readonly order: NoValues;
  readonly "artist-decides": NoValues;
  readonly moves: OfSide & Numbers<"mean" | "greatest"> & { readonly dot: Dot };
  /** In mm². */
  readonly areas: Numbers<"hair" | "skin">;
  readonly "areas-unknown": NoValues;
  readonly "sides-even": NoValues;
  readonly "sides-differ": { readonly measures: readonly Note<"differs" | "differs-in-share">[] };
  readonly "lid-room": Numbers<Side>;
  readonly "lid-room-unknown": NoValues;
  readonly "front-share": Numbers<Side | "asked">;
  /** Where no share was asked for. */
  readonly "front-share-measured": Numbers<Side>;
  readonly "lid-room-closes": OfSide & Numbers<"by" | "most">;
  /** What stands in the way, and for programs the code of its error with the path of the field. */
  readonly "no-solution": {
    readonly error: GeometryErrorCode;
    readonly path: string;
    readonly why: Note<keyof ObstacleNotes>;
  };
}

interface OfField {
  /** More than one where landmarks are missing. */
  readonly field: readonly Note<keyof FieldNotes>[];
}

/** What stands in the way of a plan. */
export interface ObstacleNotes {
  readonly "why-missing": OfField;
  readonly "why-range": OfField & Numbers<"value" | "from" | "to">;
  readonly "why-value": OfField & { readonly value: string };
  readonly "why-no-place": OfField;
  readonly "why-pins": OfField;
  readonly "why-over-eye": OfSide;
}

/** A difference, left less right: a length in mm, or a share. */
interface Difference extends Numbers<"difference"> {
  readonly measure: FaceMeasureName;
}

/** A choice that stands in the way of a plan. */
export interface FieldNotes {
  /** By its path in a face, such as `left.pupil`. */
  readonly "landmark-needed": { readonly landmark: string };
  /** By its name; as it is, where that is no choice. */
  readonly choice: { readonly choice: string };
  readonly "choice-of-shape": { readonly shape: string };
  readonly "choice-of-thickness": { readonly station: string };
  readonly "dot-of-side": { readonly side: string; readonly dot: string };
  /** Counted from 1. */
  readonly "pin-number": Numbers<"number">;
}

/** What these notes hold within them. */
export interface WeighingNoteParts extends ObstacleNotes, FieldNotes {
  readonly differs: Difference;
  readonly "differs-in-share": Difference;
}

export const weighingNote: NoteMaker<WeighingNotes & WeighingNoteParts> =
  /* @__PURE__ */ noteMaker();
