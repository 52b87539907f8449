import type { CodeOf } from "../quantities/note.js";

export const ADVICE_CODES = ["repeat-placements", "measure-better"] as const;

/** Codes of the advice that an undecided result carries. */
export type AdviceCode = CodeOf<typeof ADVICE_CODES, typeof ADVICE>;

/** What would settle an undecided result. */
export const ADVICE = {
  "repeat-placements":
    "The mean of {placements} independent placements like this one would decide, or one reading with a standard uncertainty of at most {u:2}, such as a ruler's.",
  "measure-better":
    "Only a reading with a standard uncertainty of at most {u:2} would decide, such as a ruler's; it would take more placements like this one than anybody averages.",
} as const;
