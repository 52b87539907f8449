import {
  type BrowPlan,
  eachSide,
  mm,
  outline,
  planBrows,
  type PlannableFace,
  type Point,
  say,
  type Side,
} from "brow-geometry";
import { densify } from "brow-geometry/geometry";
import { type Brow, type FaceWith, mapFace } from "brow-geometry/landmarks";
import { compareResult, type StageResult } from "brow-geometry/mapping";
import { outlineArea, outlineBorders } from "brow-geometry/proportions";
import { flatPoint } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heightOver } from "../../../src/geometry/internal.js";
import { SIDES } from "../../../src/units/internal.js";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

type Bordered = Required<Brow<"mm">>;

/** The plan's own outlines as points, so fine that straight pieces stray by a thousandth of a millimetre. */
const bordersOf = ({ dots, choices }: BrowPlan, side: Side): Bordered =>
  outlineBorders(outline(dots[side], choices.shape), mm(0.001));

const areaOf = ({ dots, choices }: BrowPlan, side: Side): number =>
  outlineArea(outline(dots[side], choices.shape));

/** A capture of the brows as drawn, changed as told. */
function captured(
  plan: BrowPlan,
  change: (brow: Bordered, side: Side) => Bordered = (brow) => brow,
): FaceWith<"mm", "brow"> {
  const sides = eachSide((side) => ({
    ...plan.face[side],
    brow: change(bordersOf(plan, side), side),
  }));
  return { ...plan.face, ...sides };
}

function resultOf(plan: BrowPlan, face: FaceWith<"mm", "brow">, weeks = 6): StageResult {
  const [result] = compareResult(plan, [{ name: "found", weeks, face }]).results;
  if (result === undefined) throw new Error("no result");
  return result;
}

/** The upper border moved up by a share of the brow's thickness, at every place. */
const grown =
  (share: number) =>
  ({ upper, lower }: Bordered): Bordered => ({
    upper: densify(upper, mm(1)).map(([x, y]) => {
      const below = heightOver(mm(x), lower) ?? y;
      return flatPoint<"mm">(x, y + share * (y - below));
    }),
    lower,
  });

const moved =
  (by: (point: Point<"mm">, side: Side) => Point<"mm">) =>
  ({ upper, lower }: Bordered, side: Side): Bordered => ({
    upper: upper.map((point) => by(point, side)),
    lower: lower.map((point) => by(point, side)),
  });

describe("a plan drawn exactly", () => {
  it("and compared with itself is wholly shared", () => {
    fc.assert(
      fc.property(anyFace(1), (face) => {
        const plan = planBrows(face, {}, { preview: true });
        const capture = { name: "found", weeks: 6, face: captured(plan) };
        const { planned: then, results } = compareResult(plan, [capture]);
        const [result] = results;
        if (result === undefined) throw new Error("no result");
        const { brows, touchUps, evenness, notes } = result;
        for (const side of SIDES) {
          const { areas, thickness, start, tailEnd } = brows[side];
          const planned = areaOf(plan, side);
          // Along about 45 mm of each border, straight pieces stray by 0.001 mm at most.
          expectClose(areas?.shared.value, planned, 0.1);
          expectClose([areas?.lost.value, areas?.spread.value], [0, 0], 0.1);
          const off = thickness?.map(({ difference }) => difference.value) ?? [];
          expectClose(off, [0, 0, 0, 0, 0], 0.01);
          expect([...start.ways, ...tailEnd.ways]).toEqual([]);
        }
        expect(touchUps).toEqual([]);
        expect(notes).toEqual([]);
        const ends = evenness.differences.filter(({ measure }) => !measure.startsWith("arch"));
        for (const { measure, difference } of ends) {
          const asked = then.differences.find((one) => one.measure === measure);
          expectClose(difference.value, asked?.difference.value, 1e-6);
        }
      }),
      { numRuns: 6 },
    );
  });

  it("is found wherever its capture lies and however large it is", () => {
    const elsewhere = mapFace(captured(syntheticPlan), ([x, y]) => flatPoint(3 - y / 2, x / 2 - 2));
    const { brows } = resultOf(syntheticPlan, elsewhere as FaceWith<"mm", "brow">);
    expectClose(brows.left.areas?.lost.value, 0, 0.1);
    expectClose(brows.left.areas?.shared.value, areaOf(syntheticPlan, "left"), 0.1);
  });
});

describe("what was lost and what spread", () => {
  const planned = areaOf(syntheticPlan, "left");

  it("is a quarter of the area where a quarter of the thickness is gone", () => {
    const { brows, touchUps } = resultOf(syntheticPlan, captured(syntheticPlan, grown(-0.25)));
    const { areas, thickness } = brows.left;
    expectClose(areas?.lost.value, planned / 4, 0.2);
    expectClose(areas?.shared.value, (3 * planned) / 4, 0.2);
    expectClose(areas?.spread.value, 0, 0.2);
    for (const { planned: asked, found } of thickness ?? []) {
      expectClose(found.value, 0.75 * asked, 0.02);
    }
    // 7.5 mm at the start, a quarter of it 1.9: proven beyond 0.5. All lies along the upper border.
    expect(touchUps.map(({ along }) => along)).toEqual(touchUps.map(() => "upper"));
    expect(touchUps.length).toBeGreaterThanOrEqual(4);
    const filled = touchUps.filter(({ side }) => side === "left");
    expect(filled.reduce((sum, { area }) => sum + area, 0)).toBeLessThan(planned / 4 + 0.2);
    const [first] = touchUps;
    expect(first?.area).toBeGreaterThanOrEqual(touchUps[1]?.area ?? Infinity);
  });

  it("is spread where the brow grew by a quarter, and nothing to fill", () => {
    const { brows, touchUps, notes } = resultOf(
      syntheticPlan,
      captured(syntheticPlan, grown(0.25)),
    );
    expectClose(brows.left.areas?.spread.value, planned / 4, 0.2);
    expectClose(brows.left.areas?.lost.value, 0, 0.2);
    expect(touchUps).toEqual([]);
    expect(notes.map(({ code }) => code)).toEqual(["result-spread", "result-spread"]);
    expect(notes.map((note) => say(note))[1]).toContain("licensed practice");
  });

  it("adds up: what is shared and what is lost are the plan, wherever the brow went", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.double({ min: -4, max: 4, noNaN: true }),
        (across, up) => {
          const face = captured(
            syntheticPlan,
            moved(([x, y]) => flatPoint(x + across, y + up)),
          );
          const { areas } = resultOf(syntheticPlan, face).brows.left;
          expectClose((areas?.shared.value ?? 0) + (areas?.lost.value ?? 0), planned, 0.1);
          // The same brow elsewhere: what it lost here it gained there.
          expectClose(areas?.spread.value, areas?.lost.value, 0.2);
        },
      ),
      { numRuns: 10 },
    );
  });

  it("has the end of a tail that faded among what to fill", () => {
    const tail = Math.abs(syntheticPlan.dots.left.tailEnd[0]);
    const until = tail - 6;
    const face = captured(syntheticPlan, (brow, side) => {
      const end = mm(until);
      const kept = (line: Bordered["upper"]): Bordered["upper"] => [
        ...line.filter(([x]) => Math.abs(x) < until),
        flatPoint(end, heightOver(end, line) ?? Number.NaN),
      ];
      return side === "left" ? { upper: kept(brow.upper), lower: kept(brow.lower) } : brow;
    });
    const { touchUps, brows, notes } = resultOf(syntheticPlan, face);
    expect(touchUps.map(({ side, along, from, to }) => [side, along, from, to])).toEqual([
      ["left", "end", "upperArch", "tailEnd"],
    ]);
    expectClose(touchUps[0]?.gap.value, 6, 0.1);
    expectClose(touchUps[0]?.area, brows.left.areas?.lost.value, 0.1);
    expectClose(brows.left.tailEnd.outward.value, -6, 0.1);
    expect(brows.left.tailEnd.decisions?.outward.outcome).toBe("outside");
    expect(brows.right.tailEnd.decisions?.outward.outcome).not.toBe("outside");
    expect(notes.map(({ code }) => code)).toEqual(["touch-up-practice"]);
  });
});

describe("evenness then and now", () => {
  it("shows a brow that stands lower than it was planned", () => {
    const face = captured(
      syntheticPlan,
      moved(([x, y], side) => flatPoint(x, side === "left" ? y - 2.5 : y)),
    );
    const { planned, results } = compareResult(syntheticPlan, [{ name: "1", weeks: 6, face }]);
    const of = (comparison: typeof planned, name: string) =>
      comparison.differences.find(({ measure }) => measure === name);
    expectClose(of(planned, "tailHeight")?.difference.value, 0, 1e-9);
    expect(of(planned, "tailHeight")?.decision?.outcome).toBe("within");
    const now = results[0] && of(results[0].evenness, "startHeight");
    expectClose(now?.difference.value, -2.5, 1e-6);
    expect(now?.decision?.outcome).toBe("outside");
  });

  it("takes what shifts both sides alike for no difference in height", () => {
    const { evenness, registration } = resultOf(syntheticPlan, captured(syntheticPlan));
    const height = evenness.differences.find(({ measure }) => measure === "startHeight");
    const [x] = syntheticPlan.dots.left.upperStart;
    const turn = (registration.turnU * Math.PI) / 180;
    // By hand: two dots by 0.26 mm each, and the turn over the way from one to the other.
    expectClose(height?.difference.u, Math.hypot(0.26, 0.26, turn * 2 * x), 1e-6);
  });
});

describe("stages", () => {
  it("follow the weeks since the work: trade practice, no source", () => {
    const face = captured(syntheticPlan, grown(-0.25));
    const weeks = [0, 0.9, 1, 3.9, 4, 8, 8.1, 150];
    const captures = weeks.map((after) => ({ name: String(after), weeks: after, face }));
    const { results } = compareResult(syntheticPlan, captures);
    expect(results.map(({ stage }) => stage)).toEqual([
      "fresh",
      "fresh",
      "healing",
      "healing",
      "healed",
      "healed",
      "later",
      "later",
    ]);
    // Nobody can tell from skin that heals what it will keep.
    expect(results.map(({ touchUps }) => touchUps.length > 0)).toEqual(weeks.map((at) => at >= 4));
    const early = results.map(({ notes }) => notes.some(({ code }) => code === "result-too-early"));
    expect(early).toEqual(weeks.map((at) => at < 4));
  });

  it("refuses what is no time after the work, and nothing to compare", () => {
    const face = captured(syntheticPlan);
    for (const weeks of [-1, Number.NaN, Infinity]) {
      const { message } = refusal(() => compareResult(syntheticPlan, [{ name: "1", weeks, face }]));
      expect(message).toContain("compareResult: captures[0].weeks is ");
    }
    expect(refusal(() => compareResult(syntheticPlan, [])).code).toBe("wrong-count");
  });

  it("says what is not known without a lower border", () => {
    const face = captured(syntheticPlan) as PlannableFace;
    const bare = { ...face, left: { ...face.left, brow: { upper: face.left.brow.upper } } };
    const { brows, notes } = resultOf(syntheticPlan, bare);
    expect(brows.left.areas).toBeUndefined();
    expect(brows.left.thickness).toBeUndefined();
    expect(brows.right.areas).toBeDefined();
    expect(notes.map(({ code }) => code)).toEqual(["result-areas-unknown"]);
  });
});
