/** Codes of the sentences that sum a grade up. */
export type GradeCode = keyof typeof SUMMARY;

/** A grade in a few sentences. */
export const SUMMARY = {
  "graded-guarded":
    'Graded by the rubric "{rubric}" ({source}) under the tolerances "{tolerances}"; what counts is proven at {percent} %.',
  "graded-simple":
    'Graded by the rubric "{rubric}" ({source}) under the tolerances "{tolerances}"; every value is taken as it was read.',
  "points-reference":
    "Against the reference: {earned} of {total} points earned, {lost} lost, {open} open.",
  "points-evenness":
    "Evenness of both sides: {earned} of {total} points earned, {lost} lost, {open} open.",
  passed: "Passed: {earned} of {total} points; it takes {needed}.",
  failed:
    "Not passed: {earned} of {total} points, and {open} open; it takes {needed}, which the open ones cannot reach.",
  "result-open":
    "Not settled: {earned} of {total} points, and {open} open; it takes {needed}. Settle what is open first.",
} as const;

/**
 * Why something could not be graded: `"not-read"`, the map does not show it, its points stay open;
 * `"not-asked"`, the reference does not have it; `"no-tolerance"`, the tolerances say nothing of it.
 * The points of the last two count for nothing.
 */
export type UngradedCode = keyof typeof UNGRADED;

/** Why something could not be graded. */
export const UNGRADED = {
  "not-read": "{what}: not read. Read it, and it can be graded.",
  "not-asked": "{what}: the reference does not have it, so that it counts for nothing.",
  "no-tolerance":
    '{what}: the tolerances "{tolerances}" say nothing of it, so that it counts for nothing.',
} as const;

/** What was found of one item. */
export const FOUND = {
  off: "{what}: {amount} off, {verdict}",
  alike: "{what}: both sides read alike, {verdict}",
  "left-more": "{what}: the left reads {amount} more than the right, {verdict}",
  "left-less": "{what}: the left reads {amount} less than the right, {verdict}",
} as const;

/** What a decision says, beside the advice of one that is undecided. */
export const VERDICTS = {
  within: "within tolerance",
  outside: "outside",
  undecided: "not proven either way. {advice}",
} as const;

/** The advice for what lies on the limit itself. */
export const ON_THE_LIMIT =
  "It lies on the limit itself, where no reading decides: read it once more, or let the value alone decide (rule simple).";

/** What is read, by its name, on which side. */
export const READ = {
  one: "{side} {measure}",
  between: "{measure}",
  both: "{measure} of both sides",
} as const;
