import {
  checkCapture,
  eachSide,
  type Face,
  mm,
  naturalDots,
  planBrows,
  px,
  recordOf,
  replay,
  requirePlannable,
  say,
  scaleFromReference,
} from "brow-geometry";
import { type CaptureComparison, compareCaptures } from "brow-geometry/symmetry";
import { comparisonFindings } from "brow-geometry/mapping";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { parseRecord } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { photograph } from "../../support/photograph.js";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";

/** The synthetic face with its brows raised. */
function raised(right: number, left: number): SyntheticFace {
  const face = syntheticFace();
  const up = (side: "right" | "left", by: number): SyntheticFace["left"]["brow"] => ({
    upper: face[side].brow.upper.map(([x, y]) => flatPoint(x, y + by)),
    lower: face[side].brow.lower.map(([x, y]) => flatPoint(x, y + by)),
  });
  return {
    ...face,
    right: { ...face.right, brow: up("right", right) },
    left: { ...face.left, brow: up("left", left) },
  };
}

function compared(after: SyntheticFace): CaptureComparison {
  const [before, later] = [syntheticFace(), after].map((face) => ({
    face,
    dots: eachSide((side) => naturalDots(face[side].brow).dots),
  }));
  if (before === undefined || later === undefined) expect.fail("two captures");
  return compareCaptures(before, later);
}

describe("comparisonFindings", () => {
  it("says which brow stands elsewhere, by how much, once a side", () => {
    const [finding, ...more] = comparisonFindings(compared(raised(0, 3)));
    expect(more).toEqual([]);
    expect(finding?.code).toBe("brow-displaced");
    expect(finding && say(finding)).toMatch(
      /^The left brow stands 3\.\d mm higher in the later capture, more than 1 mm:/,
    );
    expect(comparisonFindings(compared(raised(-3, 3))).map((one) => say(one).slice(0, 40))).toEqual(
      [
        expect.stringMatching(/^The right brow stands [23]\.\d mm lower in/),
        expect.stringMatching(/^The left brow stands [23]\.\d mm higher in/),
      ],
    );
  });

  it("says nothing of brows that may stand where they stood", () => {
    expect(comparisonFindings(compared(raised(0, 0)))).toEqual([]);
    expect(comparisonFindings(compared(raised(0.9, 0)))).toEqual([]);
  });

  it("passes on that landmarks have moved which should not", () => {
    const face = syntheticFace();
    const other = { ...face, midline: { ...face.midline, subnasale: mm([9, -44]) } };
    const comparison = compared(other);
    expect(comparison.registration.consistent).toBe(false);
    expect(comparisonFindings(comparison).map(({ code }) => code)).toContain(
      "stable-points-disagree",
    );
  });
});

describe("a plan whose captures contradict each other", () => {
  it("cautions that the expression differs, through JSON and replay too", () => {
    const findings = comparisonFindings(compared(raised(0, 3)));
    const record = recordOf({ kind: "face", face: syntheticFace() }, {}, { findings });
    const caution = record.plan.cautions.find(({ code }) => code === "expression-differs");
    expect(caution && say(caution)).toMatch(
      /^Expression differs between captures\. The left brow stands 3/,
    );
    expect(caution?.finding?.code).toBe("brow-displaced");
    const back = parseRecord(JSON.parse(JSON.stringify(record)));
    expect(replay(back).cautions).toEqual(record.plan.cautions);
  });

  it("cautions that the head was held differently", () => {
    const face = syntheticFace();
    const moved = { ...face, midline: { ...face.midline, subnasale: mm([9, -44]) } };
    const findings = comparisonFindings(compared(moved));
    const { cautions } = planBrows(face, {}, { findings });
    const caution = cautions.find(({ code }) => code === "pose-differs");
    expect(caution && say(caution)).toMatch(/^The head was held differently in another capture\. /);
  });

  it("says the same of a check against a baseline", () => {
    const pose = { factor: 0.1, tilt: 0, at: [1000, 900] } as const;
    const onPhoto = (face: SyntheticFace): Face<"px"> => photograph(face, pose);
    const found = checkCapture(onPhoto(raised(4, 4)), {
      purpose: "map",
      baseline: onPhoto(syntheticFace()),
      scale: scaleFromReference(px([0, 0]), px([500, 0]), mm(50)),
    });
    expect(found.map(({ code }) => code)).toContain("brow-raised");
    const { cautions } = planBrows(
      requirePlannable(mapFace(raised(4, 4), (point) => point)),
      {},
      { findings: found },
    );
    const differs = cautions.filter(({ code }) => code === "expression-differs");
    expect(differs.map(({ finding }) => finding?.code)).toEqual(["brow-raised", "brow-raised"]);
    expect(differs[0] && say(differs[0])).toMatch(
      /^Expression differs between captures\. The right brow stands 4\.\d mm higher than in the baseline/,
    );
  });
});
