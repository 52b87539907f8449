import type { Dot } from "../../landmarks/index.js";
import type { Station } from "../../proportions/index.js";
import type { Way } from "../../symmetry/index.js";
import type { Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type NoValues, type Numbers } from "../../units/internal.js";
import type { WayCode } from "../plan/move-notes.js";

interface OfSide {
  readonly side: Side;
}

interface OfDot extends OfSide {
  readonly dot: Dot;
}

/** Codes of what is done in a step of work. */
export type StepCode = keyof StepNotes;

/** What to do, step by step, each with its values; lengths in millimetres. */
export interface StepNotes {
  readonly "step-move": OfDot & { readonly way: Note<WayCode> };
  readonly "step-place-up": OfDot & Numbers<"height">;
  readonly "step-place-across": OfDot & Numbers<"distance">;
  /** It goes neither of two ways. */
  readonly "step-stay": OfDot & { readonly one: Way; readonly other: Way };
  readonly "step-thickness": OfSide & Numbers<"thickness"> & { readonly station: Station };
  readonly "step-thickness-unknown": OfSide & { readonly station: Station };
  readonly "step-upper-border": OfSide;
  readonly "step-lower-border": OfSide;
  readonly "step-again": OfSide & { readonly [Name in "from" | "to"]: Note<RulerPlaceCode> };
}

/** Why, where it is no reason of the plan. */
export interface StepReasonNotes {
  readonly "border-joined": NoValues;
  readonly "checked-upright": NoValues;
}

/** Codes of places to which a ruler is laid. */
export type RulerPlaceCode = keyof RulerPlaceNotes;

/** What a ruler is laid to. */
export interface RulerPlaceNotes {
  readonly "at-start": NoValues;
  readonly "at-other-start": OfSide;
  readonly "at-arch": NoValues;
  readonly "at-tail-end": NoValues;
  readonly "at-outer-eye-corner": NoValues;
  readonly "at-level": NoValues;
  readonly "at-start-by-tape": NoValues;
  readonly "at-lid": NoValues;
  readonly "at-lower-border": NoValues;
  readonly "at-upper-dot": { readonly station: Station };
  readonly "at-lower-dot": { readonly station: Station };
}

export const stepNote: NoteMaker<StepNotes & StepReasonNotes & RulerPlaceNotes> =
  /* @__PURE__ */ noteMaker();
