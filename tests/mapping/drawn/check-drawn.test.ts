import { type DotDeviation, type MeasureDeviation } from "brow-geometry/mapping";
import {
  type BrowDots,
  checkDrawn,
  correctionOf,
  type Dot,
  type DrawnMap,
  eachSide,
  faceFrame,
  type Length,
  type Measured,
  measured,
  mm,
  naturalDots,
  NOTICED_BY_OTHERS,
  outline,
  planBrows,
  px,
  requirePlannable,
  say,
  scaleFromReference,
  type Side,
  type Sides,
  toFace,
} from "brow-geometry";
import { outlineBorders } from "brow-geometry/proportions";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { flatPoint } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyNumber } from "../../support/arbitraries.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

const plan = syntheticPlan;

/** The planned dots, one of them drawn elsewhere. */
function drawnWith(side: Side, dot: Dot, outward: number, up: number): Sides<BrowDots<"mm">> {
  const [x, y] = plan.dots[side][dot];
  const sign = side === "left" ? 1 : -1;
  const moved = { ...plan.dots[side], [dot]: flatPoint<"mm">(x + sign * outward, y + up) };
  return { ...plan.dots, [side]: moved };
}

const RULER: Length<"mm"> = mm(0.2);

/** Corrections in words. */
const corrected = (deviations: readonly (DotDeviation | MeasureDeviation)[]): readonly string[] =>
  deviations.flatMap((one) => {
    const correction = correctionOf(one);
    return correction === undefined ? [] : [say(correction)];
  });

describe("checkDrawn", () => {
  it("finds nothing to correct where the plan was drawn, and the sides even", () => {
    // Finer than a ruler: thickness is held to 0.5 mm.
    const check = checkDrawn(plan, { dots: plan.dots, u: mm(0.1) });
    expect(check.dots).toHaveLength(14);
    expect(check.outcome).toBe("within");
    expect(
      [...check.dots, ...check.measures].filter((one) => correctionOf(one) !== undefined),
    ).toEqual([]);
    for (const { difference } of check.measures) expect(difference.value).toBeCloseTo(0, 9);
    for (const { difference } of check.comparison.differences) {
      expect(difference.value).toBeCloseTo(0, 9);
    }
  });

  it("says of any dot how far it is off on its own side", () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Side>("right", "left"),
        fc.constantFrom(...DOT_NAMES),
        anyNumber(1.5),
        anyNumber(1.5),
        (side, dot, outward, up) => {
          const { dots } = checkDrawn(plan, { dots: drawnWith(side, dot, outward, up), u: mm(0) });
          for (const one of dots) {
            const off = one.side === side && one.dot === dot;
            expect(one.outward.difference.value).toBeCloseTo(off ? outward : 0, 9);
            expect(one.up.difference.value).toBeCloseTo(off ? up : 0, 9);
            expect(one.outward.decision?.outcome).toBe(
              off && Math.abs(outward) > 1 ? "outside" : "within",
            );
          }
        },
      ),
      { numRuns: 20 },
    );
  });

  it("corrects by the way back, on those axes alone that are outside", () => {
    const { dots } = checkDrawn(plan, {
      dots: drawnWith("right", "upperArch", 0.4, 2.1),
      u: RULER,
    });
    expect(corrected(dots)).toEqual(["right arch: down 2 mm"]);
    const both = checkDrawn(plan, { dots: drawnWith("left", "tailEnd", -3, -1.6), u: RULER });
    expect(corrected(both.dots)).toEqual(["left tail end: up 1.5 mm, outward 3 mm"]);
  });

  it("leaves undecided what the placement cannot tell", () => {
    // From one placement by hand, 0.26 mm, on one dot: accepted up to 1 − 1.645·0.26 = 0.57 mm.
    const outcome = (up: number) =>
      checkDrawn(plan, { dots: drawnWith("left", "upperArch", 0, up) }).dots.find(
        ({ side, dot }) => side === "left" && dot === "upperArch",
      )?.up.decision?.outcome;
    expect([0.56, 0.59, 1.42, 1.44].map(outcome)).toEqual([
      "within",
      "undecided",
      "undecided",
      "outside",
    ]);
    const dots = drawnWith("left", "upperArch", 0, 0.8);
    const simple = checkDrawn(plan, { dots }, { rule: "simple" });
    expect(simple.dots.every(({ up }) => up.decision?.outcome === "within")).toBe(true);
  });

  it("gives what is read on dots the uncertainty of the dots, and no more", () => {
    const { measures, comparison } = checkDrawn(plan, { dots: plan.dots, u: mm(0.3) });
    const u = (measure: string) =>
      measures.find((one) => one.side === "left" && one.measure === measure)?.drawn.u;
    expect(u("startHeight")).toBeCloseTo(0.3, 6);
    // Between two places of a frontal view, each 0.3 mm uncertain.
    expect(u("frontOnPhoto")).toBeCloseTo(0.3 * Math.SQRT2, 6);
    const heights = comparison.differences.find(({ measure }) => measure === "archHeight");
    expect(heights?.difference.u).toBeCloseTo(0.3 * Math.SQRT2, 6);
  });

  it("works from readings alone", () => {
    const { front, tail, startHeight } = plan.measures.left;
    const by = (of: Measured | undefined, more: number): Measured =>
      measured((of?.value ?? Number.NaN) + more, 0.2);
    const { dots, measures, outcome, comparison } = checkDrawn(plan, {
      readings: {
        right: {},
        left: { front: by(front, 1.6), tail: by(tail, -0.9), startHeight: by(startHeight, 0.1) },
        startToStart: by(plan.measures.startToStart, -2),
      },
    });
    expect(dots).toEqual([]);
    expect(outcome).toBe("outside");
    expect(comparison.differences).toEqual([]);
    expect(
      measures
        .map((one) => [one.measure, one.decision, corrected([one])[0]] as const)
        .map(([measure, decision, correction]) => [measure, decision?.outcome, correction ?? ""]),
    ).toEqual([
      ["front", "outside", "left front: 1.5 mm too long"],
      ["tail", "undecided", ""],
      ["startHeight", "within", ""],
      ["startToStart", "outside", "start to start: 2 mm too narrow"],
    ]);
  });

  it("lets a reading by hand count more than the dots", () => {
    const archHeight = measured((plan.measures.left.archHeight?.value ?? 0) + 3, 0.1);
    const { measures, comparison } = checkDrawn(plan, {
      dots: plan.dots,
      readings: { right: {}, left: { archHeight } },
    });
    const read = measures.find(({ side, measure }) => side === "left" && measure === "archHeight");
    expect(read?.drawn).toEqual(archHeight);
    const apart = comparison.differences.find(({ measure }) => measure === "archHeight");
    expect(apart?.difference.value).toBeCloseTo(3, 9);
    expect(apart?.difference.u).toBeCloseTo(Math.hypot(0.1, 0.26), 6);
  });

  it("decides by the tolerances that it is given", () => {
    const dots = drawnWith("left", "tailEnd", 1.5, 0);
    const ours = checkDrawn(plan, { dots, u: RULER });
    const others = checkDrawn(plan, { dots, u: RULER }, { tolerances: NOTICED_BY_OTHERS });
    expect([ours.outcome, others.outcome]).toEqual(["outside", "within"]);
    const thickness = others.measures.find(({ measure }) => measure === "archThickness");
    expect(thickness?.decision).toBeUndefined();
  });

  it("names thickness, share and distance by their own words", () => {
    const off = (dot: Dot, outward: number, up: number) =>
      checkDrawn(plan, {
        dots: drawnWith("left", dot, outward, up),
        u: mm(0.05),
      }).measures.flatMap((one) => corrected([one]));
    expect(off("lowerBody", 0, 1)).toContain("left thickness at the body: 1 mm too thin");
    expect(off("upperArch", 3, 0)).toContain("left arch from the midline: 3 mm too far out");
    expect(off("upperArch", 3, 0)).toContainEqual(
      expect.stringMatching(/^left front share: 0\.0\d too much$/),
    );
  });

  it.each<[DrawnMap, string]>([
    [{}, "drawn is {}"],
    [{ dots: eachSide(() => ({})) }, "drawn is {"],
    [{ dots: plan.dots, u: mm(-1) }, "drawn.u is -1"],
    [{ dots: { ...plan.dots, left: { tailEnd: mm([Number.NaN, 1]) } } }, "drawn.dots.left.tailEnd"],
    [
      { readings: { right: {}, left: { tail: { value: Number.NaN, u: 0 } } } },
      "drawn.readings.left.tail.value is NaN",
    ],
    [{ readings: { right: { tail: { value: 9, u: -1 } }, left: {} } }, "readings.right.tail.u"],
  ])("refuses what says nothing, by its name: %j", (drawn, message) => {
    expect(refusal(() => checkDrawn(plan, drawn)).message).toContain(message);
  });

  it("takes the landmarks of a drawn brow, photographed again in another pose", () => {
    const drawn = eachSide((side) => outlineBorders(outline(plan.dots[side]), mm(0.01)));
    const face = syntheticFace();
    const upper = drawn.left.upper.map(([x, y]) => mm([x, y + 2]));
    const lower = drawn.left.lower.map(([x, y]) => mm([x, y + 2]));
    const sides = {
      right: { ...face.right, brow: drawn.right },
      left: { ...face.left, brow: { upper, lower } },
    };
    const photo = photograph({ ...face, ...sides }, { factor: 0.2, tilt: 9, at: [900, 700] });
    const scale = scaleFromReference(px([0, 0]), px([250, 0]), mm(50));
    const seen = requirePlannable(toFace(photo, faceFrame(photo, scale)));
    const read = eachSide((side) => naturalDots(seen[side].brow).dots);
    const { dots } = checkDrawn(plan, { dots: read });
    const up = (side: Side, dot: Dot): number =>
      dots.find((one) => one.side === side && one.dot === dot)?.up.difference.value ?? Number.NaN;
    for (const dot of ["upperStart", "tailEnd", "lowerStart"] as const) {
      expect(up("right", dot)).toBeCloseTo(0, 6);
      expect(up("left", dot)).toBeCloseTo(2, 6);
    }
    const corrections = corrected(dots);
    expect(corrections).toContain("left start: down 2 mm");
    expect(corrections.filter((text) => text.startsWith("right"))).toEqual([]);
  });

  it("leaves alone what the plan does not have", () => {
    const face = syntheticFace();
    const { pupil: _, ...blind } = face.right;
    const without = planBrows({ ...face, right: blind });
    const read = { front: measured(33, 0.2), lidToBrow: measured(12, 0.2) };
    const { measures } = checkDrawn(without, { readings: { right: read, left: {} } });
    expect(measures.map(({ measure }) => measure)).toEqual(["front"]);
  });

  it("reads tape, lid distance and area on the outline through the dots, where all are known", () => {
    const names = (dots: Sides<BrowDots<"mm">>): readonly string[] =>
      checkDrawn(plan, { dots }).measures.map(({ measure }) => measure);
    const { right, left } = eachSide((side) => {
      const { upperBody: _, ...drawn } = plan.dots[side];
      return drawn;
    });
    const onOutline = ["frontAlong", "tailAlong", "lidToBrow", "area"];
    expect(names({ right, left })).toEqual(expect.arrayContaining(onOutline));
    for (const { difference } of checkDrawn(plan, { dots: { right, left } }).measures) {
      expect(difference.value).toBeCloseTo(0, 9);
    }
    const { lowerBody: __, ...some } = left;
    const { measures } = checkDrawn(plan, { dots: { right: {}, left: some } });
    expect(measures.filter(({ measure }) => onOutline.includes(measure))).toEqual([]);
    expect(measures.map(({ measure }) => measure)).toContain("front");
  });
});
