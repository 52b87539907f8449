import {
  checkDrawn,
  type Choices,
  mm,
  NOTICED_BY_CLIENTS,
  planBrows,
  type SideComparison,
  type ToleranceSet,
} from "brow-geometry";
import { gradeMap } from "brow-geometry/grading";
import { weighChoices } from "brow-geometry/mapping";
import { type ToleranceName } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyBetween, anyFace } from "../../support/arbitraries.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** A set with some of the tolerances, each wide or narrow, some of them to one side only. */
function anyTolerances(): fc.Arbitrary<ToleranceSet> {
  const tolerance = (most: number) =>
    fc.tuple(anyBetween(most / 20, most), fc.boolean()).map(([half, oneSided]) => ({
      limits: oneSided ? { upper: half } : { lower: -half, upper: half },
      status: "ours" as const,
      source: "an invented studio",
    }));
  return fc
    .record(
      { position: tolerance(2), thickness: tolerance(1), frontShare: tolerance(0.06) },
      { requiredKeys: [] },
    )
    .map((tolerances) => ({ name: "studio", tolerances }));
}

const outcomesOf = ({ differences }: SideComparison): readonly unknown[] =>
  differences.map(({ measure, decision }) => [measure, decision?.outcome ?? "not decided"]);

describe("one set of tolerances gives one answer", () => {
  it("in the plan, in weighing, in the check and in the grade of what was drawn as planned", () => {
    fc.assert(
      fc.property(anyFace(0.8), anyTolerances(), fc.boolean(), (face, tolerances, pinned) => {
        const at = mm([24, 22]);
        const choices: Choices = {
          rule: "simple",
          tolerances,
          arch: "exocanthion-vertical",
          ...(pinned ? { pins: [{ side: "left", dot: "upperStart", at }] } : {}),
        };
        const plan = planBrows(face, choices);
        const [row] = weighChoices(face, [choices]).rows;
        if (row === undefined || row.kind === "no-solution") return expect.fail("not planned");
        expect(outcomesOf(row.comparison)).toEqual(outcomesOf(plan.comparison));
        for (const side of ["right", "left"] as const) {
          const { outcome, limits } = row.frontShare[side].decision ?? {};
          expect(plan.shareDecisions?.[side].outcome).toBe(outcome);
          expect(plan.shareDecisions?.[side].limits).toEqual(limits);
        }
        expect(plan.shareDecisions === undefined).toBe(
          tolerances.tolerances.frontShare === undefined,
        );
        const drawn = { readings: plan.measures };
        const check = checkDrawn(plan, drawn, { rule: "simple" });
        expect(check.tolerances).toEqual(tolerances);
        expect(outcomesOf(check.comparison)).toEqual(outcomesOf(plan.comparison));
        const anything = (["position", "thickness"] as const).some(
          (name: ToleranceName) => tolerances.tolerances[name] !== undefined,
        );
        if (!anything) return;
        const grade = gradeMap(drawn, { kind: "plan", plan }, { rule: "simple" });
        expect(grade.tolerances).toEqual(tolerances);
      }),
      { numRuns: 25 },
    );
  });

  it("decides nothing that the set leaves out: clients notice no front share and no thickness", () => {
    const choices: Choices = { tolerances: NOTICED_BY_CLIENTS, arch: "lateral-limbus-vertical" };
    const plan = planBrows(syntheticFace(), choices);
    expect(plan).not.toHaveProperty("shareDecisions");
    const [row] = weighChoices(syntheticFace(), [choices]).rows;
    expect(row).toMatchObject({ kind: "usable", comparison: { tolerances: NOTICED_BY_CLIENTS } });
    expect(row).not.toHaveProperty("frontShare.left.decision");
    const { measures, tolerances } = checkDrawn(plan, { dots: plan.dots });
    expect(tolerances).toBe(NOTICED_BY_CLIENTS);
    const decided = measures.filter(({ decision }) => decision !== undefined);
    expect(decided.map(({ measure }) => measure)).not.toContain("frontShare");
    expect(decided.map(({ measure }) => measure)).not.toContain("startThickness");
  });

  it("takes the set that is given in place of the plan's", () => {
    const plan = planBrows(syntheticFace(), { tolerances: NOTICED_BY_CLIENTS });
    const own = { name: "own", tolerances: {} };
    expect(checkDrawn(plan, { dots: plan.dots }, { tolerances: own }).tolerances).toBe(own);
  });
});
