import { type CodeOf, type NoteMaker, noteMaker, type Numbers } from "../quantities/note.js";

export const ADVICE_CODES = ["repeat-placements", "measure-better"] as const;

/** Codes of the advice that an undecided result carries. */
export type AdviceCode = CodeOf<typeof ADVICE_CODES, AdviceNotes>;

/** What would settle an undecided result: so many placements, or a reading that is so certain. */
export interface AdviceNotes {
  readonly "repeat-placements": Numbers<"placements" | "u">;
  readonly "measure-better": Numbers<"u">;
}

export const advice: NoteMaker<AdviceNotes> = /* @__PURE__ */ noteMaker();
