import type { GradedItem, GradePoints, GradeResult, MapGrade, UngradedItem } from "./grade.js";

export function pointsOf(
  items: readonly GradedItem[],
  ungraded: readonly UngradedItem[],
): MapGrade["points"] {
  const part = (kind: GradedItem["kind"]): GradePoints =>
    sumOf(
      items.filter((item) => item.kind === kind),
      ungraded.filter((item) => item.kind === kind),
    );
  return { all: sumOf(items, ungraded), reference: part("reference"), evenness: part("evenness") };
}

function sumOf(items: readonly GradedItem[], ungraded: readonly UngradedItem[]): GradePoints {
  const sum = (of: readonly { readonly points: number }[]): number =>
    of.reduce((total, { points }) => total + points, 0);
  const decided = (outcome: GradedItem["decision"]["outcome"]): readonly GradedItem[] =>
    items.filter((item) => item.decision.outcome === outcome);
  const earned = sum(decided("within"));
  const lost = sum(decided("outside"));
  const open =
    sum(decided("undecided")) + sum(ungraded.filter(({ reason }) => reason.code === "not-read"));
  return { total: earned + lost + open, earned, lost, open };
}

/** The least bit of rounding must not fail anybody. */
const ROUNDING = 1e-9;

/** Whether the pass mark is reached, cannot be reached any more, or depends on what is open. */
export function resultOf({ total, earned, open }: GradePoints, passMark: number): GradeResult {
  const needed = passMark * total;
  const reached = (points: number): boolean => points >= needed - ROUNDING * total;
  const without = reached(earned + open) ? "open" : "failed";
  return { passMark, needed, outcome: reached(earned) ? "passed" : without };
}
