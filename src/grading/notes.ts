import type { AmountNotes, CorrectionNotes, ReadNotes } from "../mapping/internal.js";
import type { AdviceCode, Note } from "../units/index.js";
import { type NoteMaker, noteMaker, type NoValues, type Numbers } from "../units/internal.js";

/** Codes of the sentences that sum a grade up. */
export type GradeCode = keyof GradeNotes;

/** By what a map was graded. */
interface Graded {
  readonly rubric: string;
  readonly source: string;
  readonly tolerances: string;
}

/** A grade in a few sentences, each with its values. */
export interface GradeNotes {
  readonly "graded-guarded": Graded & Numbers<"percent">;
  readonly "graded-simple": Graded;
  readonly "points-reference": Numbers<"total" | "earned" | "lost" | "open">;
  readonly "points-evenness": Numbers<"total" | "earned" | "lost" | "open">;
  readonly passed: Numbers<"earned" | "total" | "needed">;
  readonly failed: Numbers<"earned" | "total" | "open" | "needed">;
  readonly "result-open": Numbers<"earned" | "total" | "open" | "needed">;
}

/**
 * Why something could not be graded: `"not-read"`, the map does not show it, its points stay open;
 * `"not-asked"`, the reference does not have it; `"no-tolerance"`, the tolerances say nothing of it.
 * The points of the last two count for nothing.
 */
export type UngradedCode = keyof UngradedNotes;

interface What {
  readonly what: Note<keyof ReadNotes>;
}

/** Why something could not be graded, each with its values. */
export interface UngradedNotes {
  readonly "not-read": What;
  readonly "not-asked": What;
  readonly "no-tolerance": What & { readonly tolerances: string };
}

/** Codes of what is said of one item. */
export type FeedbackCode = keyof FeedbackNotes;

interface Judged extends What {
  readonly amount: Note<keyof AmountNotes>;
  readonly verdict: Note<keyof VerdictNotes>;
}

/** What was found of one item: against a reference, or of both sides. */
export interface FeedbackNotes extends CorrectionNotes {
  readonly "measure-off": Judged;
  readonly "sides-alike": What & Pick<Judged, "verdict">;
  readonly "left-more": Judged;
  readonly "left-less": Judged;
}

/** What a decision says, beside what would settle one that is undecided. */
export interface VerdictNotes {
  readonly "verdict-within": NoValues;
  readonly "verdict-outside": NoValues;
  readonly "verdict-undecided": { readonly advice: Note<AdviceCode | "on-the-limit"> };
}

/** What feedback holds within it. */
export interface GradeNoteParts extends VerdictNotes {
  /** The advice for what lies on the limit itself. */
  readonly "on-the-limit": NoValues;
}

export const gradeNote: NoteMaker<GradeNotes & UngradedNotes & FeedbackNotes & GradeNoteParts> =
  /* @__PURE__ */ noteMaker();
