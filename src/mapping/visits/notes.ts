import type { Dot } from "../../landmarks/index.js";
import type { Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type NoValues, type Numbers } from "../../units/internal.js";
import type { WayCode } from "../plan/move-notes.js";

interface OfSide {
  readonly side: Side;
}

/** Codes of the notes that a carried map may make. */
export type CarryCode = keyof CarryNotes;

/** Where skin has gone, and what holds for dots that went with it; lengths in millimetres. */
export interface CarryNotes {
  readonly "skin-moved": OfSide & { readonly dot: Dot; readonly ways: readonly Note<WayCode>[] };
  readonly "skin-stayed": OfSide;
  readonly "skin-not-seen": OfSide;
  readonly "skin-guessed": OfSide;
  readonly "carried-check-upright": NoValues;
}

/** What there is to say of a result; areas in square millimetres. */
export interface ResultNotes {
  readonly "result-too-early": Numbers<"weeks" | "least" | "most">;
  readonly "result-spread": OfSide & Numbers<"area" | "u">;
  readonly "result-areas-unknown": OfSide;
  readonly "touch-up-practice": NoValues;
}

/** Codes of what a touch-up would fill. */
export type TouchUpCode = keyof TouchUpNotes;

/** What a touch-up would fill, from one dot to the next; lengths in millimetres. */
export interface TouchUpNotes {
  readonly "fill-upper": Filled;
  readonly "fill-lower": Filled;
  readonly "fill-end": Filled;
}

type Filled = OfSide & Numbers<"area" | "gap"> & { readonly [End in "from" | "to"]: Dot };

/** What does not fit in a chain of visits, which are counted from 1. */
export interface VisitNotes {
  readonly "visit-undated": Numbers<"visit">;
  readonly "visit-out-of-order": Numbers<"visit"> & {
    readonly [Date in "date" | "before"]: string;
  };
  readonly "visit-replays-differently": Numbers<"visit">;
  readonly "visit-not-replayed": Numbers<"visit"> & { readonly refusal: Note<"no-solution"> };
  readonly "visit-face-differs": Numbers<"visit"> & { readonly finding: Note };
  readonly "visit-not-agreed": Numbers<"visit">;
}

export const visitNote: NoteMaker<CarryNotes & ResultNotes & TouchUpNotes & VisitNotes> =
  /* @__PURE__ */ noteMaker();
