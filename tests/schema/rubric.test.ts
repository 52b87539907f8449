import { measuresFromReadings } from "brow-geometry";
import { gradeMap, RULER_SHEET_RUBRIC } from "brow-geometry/grading";
import { parseRubric } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

const rubric = {
  name: "second week",
  source: "an invented course",
  items: [
    { kind: "reference", measure: "startToStart", points: 2 },
    { kind: "evenness", measure: "archHeight", points: 0.5 },
  ],
};

describe("parseRubric", () => {
  it("reads a course's rubric, and the library's own back from JSON", () => {
    expect(parseRubric(JSON.parse(JSON.stringify(rubric)))).toEqual(rubric);
    expect(parseRubric(JSON.parse(JSON.stringify(RULER_SHEET_RUBRIC)))).toEqual(RULER_SHEET_RUBRIC);
  });

  it("reads what can be graded by", () => {
    const readings = measuresFromReadings({
      right: { archHeight: "25 mm" },
      left: { archHeight: "25 mm" },
    });
    const { points } = gradeMap({ readings }, { kind: "none" }, { rubric: parseRubric(rubric) });
    expect(points.all).toEqual({ total: 0.5, earned: 0.5, lost: 0, open: 0 });
  });

  const item = (more: object): object => ({ ...rubric, items: [{ ...rubric.items[0], ...more }] });

  it.each([
    [item({ points: 0 }), "items[0].points is 0; needs a finite number above 0"],
    [item({ points: "2" }), 'items[0].points is "2"; needs a finite number above 0'],
    [item({ kind: "beauty" }), 'items[0].kind is "beauty"; needs one of reference, evenness'],
    [item({ kind: "evenness" }), 'items[0].measure is "startToStart"; needs one of front, tail'],
    [item({ measure: "colour" }), 'items[0].measure is "colour"; needs one of front, tail'],
    [item({ side: "left" }), 'items[0].side is "left"; needs another name'],
    [{ ...rubric, items: [] }, "items is []; needs a list of 1 to"],
    [{ ...rubric, items: Array.from({ length: 99 }, () => 0) }, "needs a list of 1 to"],
    [{ name: "x", items: rubric.items }, "source is missing; needs text"],
    [null, "rubric is null; needs an object with name, source, items"],
  ])("refuses %j", (json, message) => {
    const { code, message: said } = refusal(() => parseRubric(json));
    expect(code).toBe("not-parsed");
    expect(said).toContain(message);
  });
});
