/** Of a grade. */
export const GRADES = {
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
  "not-read": "{what}: not read. Read it, and it can be graded.",
  "not-asked": "{what}: the reference does not have it, so that it counts for nothing.",
  "no-tolerance":
    '{what}: the tolerances "{tolerances}" say nothing of it, so that it counts for nothing.',
  "measure-off": "{what}: {amount} off, {verdict}",
  "sides-alike": "{what}: both sides read alike, {verdict}",
  "left-more": "{what}: the left reads {amount} more than the right, {verdict}",
  "left-less": "{what}: the left reads {amount} less than the right, {verdict}",
  "verdict-within": "within tolerance",
  "verdict-outside": "outside",
  "verdict-undecided": "not proven either way. {advice}",
  "on-the-limit":
    "It lies on the limit itself, where no reading decides: read it once more, or let the value alone decide (rule simple).",
} as const;
