import {
  type Choices,
  type MeasureName,
  mm,
  type Pin,
  planBrows,
  type PlannableFace,
  say,
  type Side,
  workSteps,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { depthAt } from "brow-geometry/landmarks";
import { type WorkStage } from "brow-geometry/mapping";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

/** The order in which artists work: trade practice, no source. */
const STAGES: readonly WorkStage[] = ["starts", "arches", "tail-ends", "thickness", "borders"];

/** The synthetic face, its left brow `up` higher and `outward` farther out than the right one. */
function unevenFace(up: number, outward: number): PlannableFace {
  const face = syntheticFace();
  const move = (point: readonly [number, number, ...number[]]) =>
    flatPoint<"mm">(point[0] + outward, point[1] + up);
  const { upper, lower } = face.left.brow;
  return {
    ...face,
    left: { ...face.left, brow: { upper: upper.map(move), lower: lower.map(move) } },
  };
}

/** Which measure of the plan a check reads, by its words; none for those that it computes itself. */
const READ: Readonly<Record<string, MeasureName>> = {
  "start → arch": "front",
  "arch → tail end": "tail",
  "outer eye corner → tail end": "exocanthionToTailEnd",
  "start → lower start": "startThickness",
  "body → lower body": "bodyThickness",
  "arch → lower arch": "archThickness",
  "start, with a tape along the border → arch": "frontAlong",
  "edge of the upper lid above the pupil → lower border": "lidToBrow",
};

describe("workSteps", () => {
  it("go through the stages in the order of work, at most 14, each with a reason", () => {
    fc.assert(
      fc.property(
        anyFace(1),
        fc.constantFrom<NonNullable<Choices["lead"]>>("right", "left", "middle"),
        (face, lead) => {
          const steps = workSteps(planBrows(face, { lead }));
          const order = steps.map(({ stage }) => STAGES.indexOf(stage));
          expect(order).toEqual([...order].sort((one, other) => one - other));
          expect(steps.length).toBeLessThanOrEqual(14);
          expect(steps.slice(-2).map(({ stage, side }) => [stage, side])).toEqual([
            ["borders", "right"],
            ["borders", "left"],
          ]);
          for (const step of steps) {
            const { why, side } = step;
            expect(why).not.toEqual([]);
            expect(say(step).startsWith(side)).toBe(true);
          }
        },
      ),
      { numRuns: 5 },
    );
  });

  it("are the plan's moves in their words, and nothing that stays", () => {
    const plan = planBrows(unevenFace(3, 2), { lead: "left" });
    const moves = plan.moves.filter(({ kind }) => kind !== "stay");
    expect(moves.length).toBeGreaterThan(4);
    expect(moves.length).toBeLessThan(plan.moves.length);
    const steps = workSteps(plan);
    expect(steps.slice(0, -2).map((step) => say(step))).toEqual(moves.map((move) => say(move)));
  });

  it("check with readings of the plan, the ruler's zero added", () => {
    fc.assert(
      fc.property(anyFace(1), fc.double({ min: 0, max: 10, noNaN: true }), (face, zero) => {
        const plan = planBrows(face);
        let read = 0;
        for (const { side, checks } of workSteps(plan, { rulerZero: mm(zero) })) {
          for (const { laid, reading, u } of checks) {
            const measure = READ[say(laid)];
            if (measure === undefined) continue;
            read += 1;
            const planned = plan.measures[side][measure];
            expect(reading).toBeCloseTo((planned?.value ?? Number.NaN) + zero, 9);
            expect(u).toBe(planned?.u);
          }
        }
        // Each of the eight at least once a side, upright.
        expect(read).toBeGreaterThanOrEqual(16);
      }),
      { numRuns: 5 },
    );
  });

  it("read every distance again at the end, evenness first", () => {
    const [right, left] = workSteps(syntheticPlan).slice(-2);
    const own = [
      "inner eye corner → start",
      "inner eye corner → arch",
      "start → arch",
      "outer eye corner → tail end",
      "arch → tail end",
      "start → lower start",
      "body → lower body",
      "arch → lower arch",
      "start, with a tape along the border → arch",
      "edge of the upper lid above the pupil → lower border",
    ];
    expect(right?.checks.map(({ laid }) => say(laid))).toEqual([
      "one ruler across both brows, start to start: level, square to the midline",
      "left start → start",
      "one ruler across both brows, arch to arch: level, square to the midline",
      "one ruler across both brows, tail end to tail end: level, square to the midline",
      ...own,
    ]);
    expect(left?.checks.map(({ laid }) => say(laid))).toEqual(own);
  });

  it("say which side stays higher where a ruler across both is not to be level", () => {
    const { right: own, left: other } = syntheticPlan.dots;
    const pins: Pin[] = [
      { side: "right", dot: "upperStart", at: own.upperStart },
      {
        side: "left",
        dot: "upperStart",
        at: mm([other.upperStart[0], other.upperStart[1] + 1.4]),
      },
    ];
    const [right] = workSteps(planBrows(syntheticFace(), { pins })).slice(-2);
    // 1.4 mm, in halves of a millimetre.
    expect(right?.checks[0] && say(right.checks[0].laid)).toBe(
      "one ruler across both brows, start to start: left 1.5 mm higher",
    );
  });

  it("lay a ruler from the inner eye corner to dots through space, not square to the midline", () => {
    const { dots, measures, skin, face } = syntheticPlan;
    const check = workSteps(syntheticPlan)
      .at(-1)
      ?.checks.find(({ laid }) => say(laid) === "inner eye corner → start");
    const [x, y] = dots.left.upperStart;
    // A brow lies 15 ± 2 mm ahead of the inner eye corners on the midline and falls back as |x|³/L².
    const ahead = 15 + depthAt(dots.left.upperStart, skin);
    const [across] = face.left.endocanthion;
    expect(check?.reading).toBeCloseTo(Math.hypot(x - across, y, ahead), 9);
    expect(check?.reading).toBeGreaterThan((measures.left.startHeight?.value ?? 0) + 3);
    // Nearly all of it: the depth's 2 mm over the ruler's slant, and the height's own.
    const { u = 0 } = measures.left.startHeight ?? {};
    const length = check?.reading ?? Number.NaN;
    expect(check?.u).toBeCloseTo(Math.hypot((ahead / length) * 2, (y / length) * u), 1);
  });

  it("leave the words alone when the ruler begins elsewhere", () => {
    const plan = syntheticPlan;
    const words = (zero: number) =>
      workSteps(plan, { rulerZero: mm(zero) }).map((step) => say(step));
    expect(words(5)).toEqual(words(0));
    expect(refusal(() => workSteps(plan, { rulerZero: mm(Number.NaN) })).message).toContain(
      "workSteps: rulerZero is NaN",
    );
  });

  it("give a pinned dot the reason of its pin, also below", () => {
    const free = syntheticPlan.dots.left;
    const pin = (dot: Pin["dot"], reason: string): Pin => ({
      side: "left",
      dot,
      at: mm([free[dot][0], free[dot][1] - 1.4]),
      by: "M.",
      reason,
    });
    const plan = planBrows(syntheticFace(), {
      keepHair: mm(0),
      pins: [pin("upperArch", "scar"), pin("lowerBody", "mole")],
    });
    const why = (stage: WorkStage, side: Side, word: string) =>
      workSteps(plan)
        .find((step) => step.stage === stage && step.side === side && say(step).includes(word))
        ?.why.map((reason) => say(reason))
        .join(" ");
    expect(why("arches", "left", "arch")).toBe(
      "The arch of the left brow stays where M. fixed it: scar.",
    );
    // The right arch mirrors the pinned one: nothing else says why it is there.
    expect(why("arches", "right", "arch")).toBe(why("arches", "left", "arch"));
    expect(why("tail-ends", "right", "tail")).toContain("Tail end on the line");
    expect(workSteps(plan).filter((step) => step.why.length === 0)).toEqual([]);
    expect(why("thickness", "left", "body")).toContain("mole");
    expect(why("thickness", "left", "arch")).not.toContain("mole");
  });

  it("give a brow that is carried by measure the reason of its own start", () => {
    const face = syntheticFace();
    const [x, y] = planBrows(face).dots.left.upperStart;
    const pins: Pin[] = [{ side: "left", dot: "upperStart", at: mm([x + 1, y]), reason: "scar" }];
    const why = (carry: NonNullable<Choices["carry"]>) =>
      workSteps(planBrows(face, { lead: "left", carry, pins, keepHair: mm(0) }))
        .find(({ stage, side }) => stage === "starts" && side === "right")
        ?.why.map((reason) => say(reason))
        .join(" ");
    expect(why("mirror")).toBe("The start of the left brow stays where the artist fixed it: scar.");
    expect(why("measure")).toMatch(/^Start above the nose wing/);
  });

  it("say how thick a brow is where no lower border grows", () => {
    const face = syntheticFace();
    const flat = (sign: 1 | -1): PlannableFace["left"] => ({
      ...(sign === 1 ? face.left : face.right),
      brow: { upper: [14.5, 25, 36, 47, 58].map((x) => mm([sign * x, 20])) },
    });
    const thickness = { start: mm(8), body: mm(7.2), arch: mm(6) };
    const plan = planBrows({ ...face, right: flat(-1), left: flat(1) }, { thickness });
    const texts = workSteps(plan)
      .filter((step) => step.side === "left" && step.stage === "thickness")
      .map((step) => say(step));
    expect(texts).toEqual([
      "left start: 8 mm thick, straight down",
      "left body: 7 mm thick, straight down",
      "left arch: 6 mm thick, straight down",
    ]);
  });
});
