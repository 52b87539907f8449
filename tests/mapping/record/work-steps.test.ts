import {
  type BrowPlan,
  type Choices,
  type MeasureName,
  mm,
  type Pin,
  planBrows,
  type PlannableFace,
  say,
  type Side,
  type WorkStep,
  workSteps,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { type WorkDirection, type WorkStage } from "brow-geometry/mapping";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

/** The order in which artists work: trade practice, no source. */
const STAGES: readonly WorkStage[] = [
  "levels",
  "starts",
  "arches",
  "tail-ends",
  "upper-borders",
  "thickness",
  "lower-borders",
  "check-upright",
];

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

/** Which measure of the plan a check reads, by the words for its two ends. */
const READ: Readonly<Record<string, MeasureName>> = {
  "level of the inner eye corners, square to the midline → start": "startHeight",
  "level of the inner eye corners, square to the midline → arch": "archHeight",
  "start → arch": "front",
  "arch → tail end": "tail",
  "outer eye corner → tail end": "exocanthionToTailEnd",
  "upper start → lower start": "startThickness",
  "upper body → lower body": "bodyThickness",
  "upper arch → lower arch": "archThickness",
  "start, with a tape along the border → arch": "frontAlong",
  "edge of the upper lid above the pupil → lower border": "lidToBrow",
};

function plannedReading(plan: BrowPlan, { side, check }: WorkStep): number | undefined {
  const between = check === undefined ? "" : `${say(check.from)} → ${say(check.to)}`;
  const other: Side = side === "right" ? "left" : "right";
  if (between === `${other} start → start`) return plan.measures.startToStart?.value;
  const measure = READ[between];
  return measure && plan.measures[side][measure]?.value;
}

const stagesOf = (steps: readonly WorkStep[]): readonly WorkStage[] =>
  steps.map(({ stage }) => stage).filter((stage, index, all) => stage !== all[index - 1]);

describe("workSteps", () => {
  it("go through the stages in the order of work, each with a reason", () => {
    fc.assert(
      fc.property(
        anyFace(1),
        fc.constantFrom<NonNullable<Choices["lead"]>>("right", "left", "middle"),
        (face, lead) => {
          const steps = workSteps(planBrows(face, { lead }));
          expect(stagesOf(steps)).toEqual(STAGES);
          for (const step of steps) {
            const { why, side } = step;
            expect(why).not.toBe("");
            expect(say(step).startsWith(side)).toBe(true);
          }
        },
      ),
      { numRuns: 5 },
    );
  });

  it("say how far a dot goes and which way, as the plan's moves do, to half a millimetre", () => {
    const plan = planBrows(unevenFace(3, 2), { lead: "left" });
    const steps = workSteps(plan);
    const ways: readonly [WorkStage, string, "up" | "outward"][] = [
      ["levels", "upperStart", "up"],
      ["levels", "upperArch", "up"],
      ["starts", "upperStart", "outward"],
      ["arches", "upperArch", "outward"],
      ["tail-ends", "tailEnd", "up"],
      ["tail-ends", "tailEnd", "outward"],
    ];
    const names = { upperStart: "start", upperArch: "arch", tailEnd: "tail end" } as const;
    const opposite = { up: "down", outward: "inward" } as const;
    let moving = 0;
    for (const side of ["right", "left"] as const) {
      for (const [stage, dot, way] of ways) {
        const move = plan.moves.find((one) => one.side === side && one.dot === dot);
        if (move === undefined || move.kind === "place") return expect.fail(`${dot} is not moved`);
        const by = move[way];
        const amount = Math.round(2 * Math.abs(by)) / 2;
        const direction: WorkDirection = amount === 0 ? "none" : by > 0 ? way : opposite[way];
        const name = `${side} ${names[dot as keyof typeof names]}:`;
        const step = steps.find(
          (one) =>
            one.stage === stage &&
            say(one).startsWith(name) &&
            (one.direction === direction || say(one).includes(`neither ${way}`)),
        );
        expect(step, `${name} ${way}`).toMatchObject({ amount, direction });
        if (amount > 0) {
          moving += 1;
          expect(step && say(step)).toBe(`${name} ${direction} ${amount} mm`);
        }
      }
    }
    expect(moving).toBeGreaterThan(4);
  });

  it("check with readings of the plan, the ruler's zero added", () => {
    fc.assert(
      fc.property(anyFace(1), fc.double({ min: 0, max: 10, noNaN: true }), (face, zero) => {
        const plan = planBrows(face);
        const steps = workSteps(plan, { rulerZero: mm(zero) });
        const checked = steps.filter(({ check }) => check !== undefined);
        // Two levels, start, arch, two of the tail end, three thicknesses, both borders, three again: per side.
        expect(checked).toHaveLength(28);
        expect(steps).toHaveLength(28);
        for (const step of checked) {
          const planned = plannedReading(plan, step);
          expect(planned).toBeDefined();
          expect(step.check?.reading).toBeCloseTo((planned ?? Number.NaN) + zero, 9);
          expect(step.check?.u).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 5 },
    );
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
      at: mm([free[dot][0], free[dot][1] - 0.2]),
      by: "M.",
      reason,
    });
    const plan = planBrows(syntheticFace(), {
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
    expect(why("levels", "right", "arch")).toBe(why("arches", "left", "arch"));
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
      workSteps(planBrows(face, { lead: "left", carry, pins }))
        .find(({ stage, side }) => stage === "starts" && side === "right")
        ?.why.map((reason) => say(reason))
        .join(" ");
    expect(why("mirror")).toBe("The start of the left brow stays where the artist fixed it: scar.");
    expect(why("measure")).toMatch(/^Start above the nose wing/);
  });

  it("place what does not grow: height with the levels, distance with the arches", () => {
    const face = syntheticFace();
    const flat = (sign: 1 | -1): PlannableFace["left"] => ({
      ...(sign === 1 ? face.left : face.right),
      brow: { upper: [14.5, 25, 36, 47, 58].map((x) => mm([sign * x, 20])) },
    });
    const plan = planBrows({ ...face, right: flat(-1), left: flat(1) });
    const [x, y] = plan.dots.left.upperArch;
    const half = (value: number): number => Math.round(2 * value) / 2;
    const texts = workSteps(plan)
      .filter((step) => step.side === "left" && say(step).startsWith("left arch: place"))
      .map((step) => [step.stage, say(step)]);
    expect(texts).toEqual([
      ["levels", `left arch: place it ${half(y)} mm above the inner eye corners`],
      ["arches", `left arch: place it ${half(x)} mm from the midline`],
    ]);
  });
});
