import { type DecisionOptions, type Note } from "../units/index.js";
import type { GradeOutcome, GradePoints, GradeResult, MapGrade } from "./grade.js";
import { type GradeCode, gradeNote } from "./notes.js";

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
      ? gradeNote("graded-guarded", { ...named, percent: rounded(100 * confidence) })
      : gradeNote("graded-simple", named),
    ...partSummary("points-reference", points.reference),
    ...partSummary("points-evenness", points.evenness),
    ...(result === undefined ? [] : [resultSummary(result, points.all)]),
  ];
}

function partSummary(
  code: "points-reference" | "points-evenness",
  { total, earned, lost, open }: GradePoints,
): readonly Note<GradeCode>[] {
  if (total === 0) return [];
  const values = {
    total: rounded(total),
    earned: rounded(earned),
    lost: rounded(lost),
    open: rounded(open),
  };
  return [gradeNote(code, values)];
}

const CODES = {
  passed: "passed",
  failed: "failed",
  open: "result-open",
} as const satisfies Readonly<Record<GradeOutcome, GradeCode>>;

function resultSummary({ outcome, needed }: GradeResult, points: GradePoints): Note<GradeCode> {
  return gradeNote(CODES[outcome], {
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
