import { type DecisionOptions, type Note, note } from "../units/index.js";
import type { GradeCode, GradeOutcome, GradePoints, GradeResult, MapGrade } from "./grade.js";

/** A grade in a few sentences, for the course's record. */
export function summaryOf(
  {
    rubric,
    tolerances,
    points,
    result,
  }: Pick<MapGrade, "rubric" | "tolerances" | "points"> & {
    readonly result: GradeResult | undefined;
  },
  { rule = "guarded", confidence = 0.95 }: DecisionOptions,
): readonly Note<GradeCode>[] {
  const named = { rubric: rubric.name, source: rubric.source, tolerances: tolerances.name };
  return [
    rule === "guarded"
      ? note("graded-guarded", GUARDED, { ...named, percent: rounded(100 * confidence) })
      : note("graded-simple", SIMPLE, named),
    ...partSummary("points-reference", "Against the reference", points.reference),
    ...partSummary("points-evenness", "Evenness of both sides", points.evenness),
    ...(result === undefined ? [] : [resultSummary(result, points.all)]),
  ];
}

const BY = 'Graded by the rubric "{rubric}" ({source}) under the tolerances "{tolerances}"';
const GUARDED = `${BY}; what counts is proven at {percent} %.`;
const SIMPLE = `${BY}; every value is taken as it was read.`;

function partSummary(
  code: GradeCode,
  part: string,
  { total, earned, lost, open }: GradePoints,
): readonly Note<GradeCode>[] {
  if (total === 0) return [];
  const values = {
    total: rounded(total),
    earned: rounded(earned),
    lost: rounded(lost),
    open: rounded(open),
  };
  return [
    note(code, `${part}: {earned} of {total} points earned, {lost} lost, {open} open.`, values),
  ];
}

const CODES: Readonly<Record<GradeOutcome, GradeCode>> = {
  passed: "passed",
  failed: "failed",
  open: "result-open",
};

const RESULTS: Readonly<Record<GradeOutcome, string>> = {
  passed: "Passed: {earned} of {total} points; it takes {needed}.",
  failed:
    "Not passed: {earned} of {total} points, and {open} open; it takes {needed}, which the open ones cannot reach.",
  open: "Not settled: {earned} of {total} points, and {open} open; it takes {needed}. Settle what is open first.",
};

function resultSummary({ outcome, needed }: GradeResult, points: GradePoints): Note<GradeCode> {
  return note(CODES[outcome], RESULTS[outcome], {
    earned: rounded(points.earned),
    total: rounded(points.total),
    open: rounded(points.open),
    needed: rounded(needed),
  });
}

/** As a person writes points: to hundredths, without what sums of shares leave behind. */
function rounded(points: number): number {
  return Number(points.toFixed(2));
}
