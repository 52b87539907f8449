import type { DrawnMap } from "../mapping/index.js";
import { refuse, refusingAs, requireNames } from "../units/internal.js";
import type { GradingOptions, GradingReference, MapGrade } from "./grade.js";
import { gradeItem, type GradingSheet } from "./grade-item.js";
import { pointsOf, resultOf } from "./grade-points.js";
import { summaryOf } from "./grade-summary.js";
import { readMap } from "./read-map.js";
import { requireRubric, RULER_SHEET_RUBRIC } from "./rubric.js";

/**
 * Grades a trainee's map by a rubric: what was drawn against a reference, and both sides against
 * each other. A sheet of readings suffices; a plan that the trainee made passes for a drawn map,
 * its dots counting as placed by hand unless `u` says otherwise.
 *
 * Points are earned where a reading is proven to keep its tolerance and lost where it is proven not
 * to. What is undecided or was not read stays open, and a grade stays open where that could change
 * it.
 *
 * @throws GeometryError `out-of-range` for a rubric without items, with an item twice or without
 * points, for a pass mark outside 0…1, and where reference and tolerances cover nothing that the
 * rubric asks for; `missing-landmark` for dots without a plan; as `checkDrawn`
 *
 * @example
 * ```ts
 * import { measuresFromReadings, say } from "brow-geometry";
 * import { gradeMap } from "brow-geometry/grading";
 * const teacher = measuresFromReadings({ left: { front: "33 mm", archHeight: "25 mm" } });
 * const trainee = measuresFromReadings({ left: { front: "33 mm", archHeight: "27 mm" } });
 * const grade = gradeMap({ readings: trainee }, { kind: "readings", readings: teacher });
 * grade.items.map(({ feedback }) => say(feedback));
 * // → ["left front: 0 mm off, within tolerance", "left height of the arch: 2 mm too high"]
 * grade.points.reference; // → { total: 2, earned: 1, lost: 1, open: 0 }
 * ```
 */
export function gradeMap(
  drawn: DrawnMap,
  reference: GradingReference,
  options: GradingOptions = {},
): MapGrade {
  return refusingAs("gradeMap", () => {
    requireNames("options", options, ["rubric", "passMark", "tolerances", "rule", "confidence"]);
    const { rubric = RULER_SHEET_RUBRIC, passMark, ...judging } = options;
    requireRubric(rubric);
    if (passMark !== undefined) requirePassMark(passMark);
    const sheet: GradingSheet = { ...readMap(drawn, reference, judging), reference };
    const { tolerances } = sheet;
    const entries = rubric.items.flatMap((item) => gradeItem(item, sheet));
    const items = entries.filter((entry) => "decision" in entry);
    const ungraded = entries.filter((entry) => "reason" in entry);
    const points = pointsOf(items, ungraded);
    if (points.all.total === 0) {
      const need = "an item that the tolerances speak of, and against a reference one that it has";
      refuse("out-of-range", "rubric.items", reference.kind, need);
    }
    const result = passMark === undefined ? undefined : resultOf(points.all, passMark);
    return {
      rubric,
      tolerances,
      items,
      ungraded,
      points,
      ...(result === undefined ? {} : { result }),
      toSettle: [
        ...items
          .filter(({ decision }) => decision.outcome === "undecided")
          .map(({ feedback }) => feedback),
        ...ungraded.filter(({ reason }) => reason.code === "not-read").map(({ reason }) => reason),
      ],
      summary: summaryOf({ rubric, tolerances, points, result }, options),
    };
  });
}

function requirePassMark(passMark: number): void {
  if (passMark >= 0 && passMark <= 1) return;
  const code = Number.isFinite(passMark) ? "out-of-range" : "not-finite";
  refuse(code, "passMark", passMark, "a share of all points, from 0 to 1");
}
