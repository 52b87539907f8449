import type { FaceMeasureName, MeasureName } from "../../landmarks/index.js";
import type { MeasureKind } from "../../landmarks/internal.js";
import type { Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type Numbers } from "../../units/internal.js";
import type { MoveNotes } from "../plan/move-notes.js";

/** What is read, on one side or between both. */
export interface ReadNotes {
  readonly "read-on-side": { readonly side: Side; readonly measure: FaceMeasureName };
  readonly "read-between": { readonly measure: FaceMeasureName };
  readonly "read-on-both": { readonly measure: FaceMeasureName };
}

/** How much, without a sign, in the unit of its kind. */
export interface AmountNotes {
  readonly millimetres: Numbers<"amount">;
  readonly degrees: Numbers<"amount">;
  readonly "square-millimetres": Numbers<"amount">;
  readonly share: Numbers<"amount">;
}

interface Off {
  readonly what: Note<keyof ReadNotes>;
  readonly amount: Note<keyof AmountNotes>;
  readonly kind: MeasureKind;
}

/** How to bring back what was drawn. */
export interface CorrectionNotes extends Pick<MoveNotes, "dot-moves"> {
  readonly "too-much": Off;
  readonly "too-little": Off;
}

/** What a reading needs so that both sides are even. */
export interface EvennessNotes extends Pick<CorrectionNotes, "too-much" | "too-little"> {
  readonly even: { readonly side: Side; readonly other: Side; readonly measure: MeasureName };
  readonly "evenness-unknown": { readonly side: Side; readonly measure: MeasureName };
}

export const readingNote: NoteMaker<ReadNotes & AmountNotes & CorrectionNotes & EvennessNotes> =
  /* @__PURE__ */ noteMaker();
