import type { Dot, GuideConvention, LandmarkName, Mark } from "../../landmarks/index.js";
import type { Station } from "../../proportions/index.js";
import type { Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type NoValues, type Numbers } from "../../units/internal.js";

interface OfSide {
  readonly side: Side;
}

interface OfDot extends OfSide {
  readonly dot: Dot;
}

/** Codes of what is done in a step of work. */
export type StepCode = keyof StepNotes;

/** What to do besides moving dots, each with its values; lengths in millimetres. */
export interface StepNotes {
  /** A lower dot where no lower border grows. */
  readonly "step-thickness": OfSide & Numbers<"thickness"> & { readonly station: Station };
  readonly "step-borders": OfSide;
}

/** Why, where it is no reason of the plan. */
export interface StepReasonNotes {
  readonly "checked-upright": NoValues;
}

/** Codes of how a ruler is laid. */
export type LaidCode = keyof LaidNotes;

/** How a ruler is laid. */
export interface LaidNotes {
  readonly "laid-between": { readonly [Name in "from" | "to"]: Note<RulerPlaceCode> };
  readonly "laid-level": { readonly dot: Dot };
  readonly "laid-slanting": OfDot & Numbers<"by">;
}

/** Codes of points to mark and of lines to lay a thread along. */
export type StringCode = keyof StringNotes;

/** What a thread is laid along, and through what. */
export interface StringNotes {
  readonly "mark-midline": NoValues;
  readonly "mark-landmark": OfSide & { readonly landmark: LandmarkName };
  readonly "mark-dot": OfDot;
  readonly "thread-midline": NoValues;
  readonly "thread-across": { readonly dot: Dot };
  readonly "thread-guide": OfSide & { readonly mark: Mark; readonly rule: GuideConvention };
  readonly "thread-border": OfSide & { readonly [Name in "from" | "to"]: Dot };
}

/** Codes of places to which a ruler is laid. */
export type RulerPlaceCode = keyof RulerPlaceNotes;

/** What a ruler is laid to. */
export interface RulerPlaceNotes {
  readonly "at-start": NoValues;
  readonly "at-body": NoValues;
  readonly "at-arch": NoValues;
  readonly "at-tail-end": NoValues;
  readonly "at-lower-start": NoValues;
  readonly "at-lower-body": NoValues;
  readonly "at-lower-arch": NoValues;
  readonly "at-other-start": OfSide;
  readonly "at-inner-eye-corner": NoValues;
  readonly "at-outer-eye-corner": NoValues;
  readonly "at-start-by-tape": NoValues;
  readonly "at-lid": NoValues;
  readonly "at-lower-border": NoValues;
}

export const stepNote: NoteMaker<
  StepNotes & StepReasonNotes & LaidNotes & RulerPlaceNotes & StringNotes
> = /* @__PURE__ */ noteMaker();
