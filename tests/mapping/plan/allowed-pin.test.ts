import { test } from "@fast-check/vitest";
import {
  type BrowPlan,
  type Choices,
  type Dot,
  faceFrame,
  mm,
  type Pin,
  planBrows,
  planDots,
  planOnPhoto,
  requirePlannable,
  scaleFromIris,
} from "brow-geometry";
import { allowedPin } from "brow-geometry/mapping";
import { attempt } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

const photo = requirePlannable(faceOfMesh(frontalMesh));
const frame = faceFrame(photo, scaleFromIris(photo));
const chosen: Choices = { lead: "left", arch: "brow-length-share" };
const cases: readonly (readonly [string, BrowPlan, Choices, (choices: Choices) => BrowPlan])[] = [
  ["by hand", syntheticPlan, {}, (choices) => planBrows(syntheticPlan.face, choices)],
  [
    "on a photo",
    planOnPhoto(photo, frame, chosen),
    chosen,
    (choices) => planOnPhoto(photo, frame, choices, { preview: true }),
  ],
];

const off = fc.double({ min: -15, max: 15, noNaN: true });
const anyDrag = fc.record({
  side: fc.constantFrom("right", "left"),
  dot: fc.constantFrom(...DOT_NAMES),
  by: fc.tuple(off, off),
});

function dragged(
  plan: BrowPlan,
  side: "right" | "left",
  dot: Dot,
  by: readonly [number, number],
): Pin {
  const [x, y] = plan.dots[side][dot];
  return { side, dot, at: mm([x + by[0], y + by[1]]) };
}

describe.each(cases)("a dot that is dragged, %s", (_, plan, choices, planned) => {
  test.prop([anyDrag])("ends where a plan has it", ({ side, dot, by }) => {
    const wanted = dragged(plan, side, dot, by);
    const { pin, off, refusal: why } = allowedPin(plan, choices, wanted);
    const direct = attempt(() => planned({ ...choices, pins: [wanted] }));
    expect(direct.ok).toBe(off === 0);
    expect(why?.code).toBe(direct.ok ? undefined : direct.refusal.code);
    if (direct.ok) expect(pin).toEqual(wanted);
    expect(Math.hypot(pin.at[0] - wanted.at[0], pin.at[1] - wanted.at[1])).toBeCloseTo(off, 9);
    const { dots } = planned({ ...choices, pins: [pin] });
    expectClose(dots[side][dot].slice(0, 2), pin.at.slice(0, 2), 1e-9);
  });

  it("ends no more than 1.5 mm farther off than the nearest of many places", () => {
    for (const dot of ["upperBody", "lowerStart"] as const) {
      const [x, y] = plan.dots.left[dot];
      const isAllowed = (pin: Pin): boolean =>
        attempt(() => planDots(plan.face, { ...choices, pins: [pin] })).ok;
      const places = range(-12, 12, 1.5).flatMap((across) =>
        range(-12, 12, 1.5).map((up): Pin => ({ side: "left", dot, at: mm([x + across, y + up]) })),
      );
      const allowed = places.filter(isAllowed);
      for (const wanted of places.filter((_, index) => index % 41 === 0)) {
        const nearest = Math.min(
          ...allowed.map(({ at }) => Math.hypot(at[0] - wanted.at[0], at[1] - wanted.at[1])),
        );
        expect(allowedPin(plan, choices, wanted).off).toBeLessThanOrEqual(nearest + 1.5);
      }
    }
  });

  it("can be pinned where it is drawn, each of them", () => {
    for (const side of ["right", "left"] as const) {
      for (const dot of DOT_NAMES) {
        const { off } = allowedPin(plan, choices, dragged(plan, side, dot, [0, 0]));
        expect(off).toBe(0);
      }
    }
  });
});

describe("allowedPin", () => {
  it("lets a pin on the same dot give way, and keeps the others", () => {
    const [other, same] = [
      dragged(syntheticPlan, "left", "tailEnd", [1, 0]),
      dragged(syntheticPlan, "left", "upperArch", [2, 1]),
    ];
    const wanted = dragged(syntheticPlan, "left", "upperArch", [-1, 0]);
    const { pin, off } = allowedPin(syntheticPlan, { pins: [other, same] }, wanted);
    expect([pin, off]).toEqual([wanted, 0]);
  });

  it("stops an arch before the tail end, 17.9 mm farther out at the least", () => {
    const wanted: Pin = { side: "left", dot: "upperArch", at: mm([90, 25]) };
    const { pin, refusal: why } = allowedPin(syntheticPlan, {}, wanted);
    expect(pin.at[0]).toBeLessThan(syntheticPlan.dots.left.tailEnd[0]);
    expect(why?.message).toContain("needs a place nearer the midline than the tail end");
  });

  it("throws what does not hang on the place", () => {
    const pin = dragged(syntheticPlan, "left", "tailEnd", [0, 0]);
    const { code } = refusal(() => allowedPin(syntheticPlan, { lead: "top" as never }, pin));
    expect(code).toBe("out-of-range");
    const nowhere = { ...pin, at: mm([Number.NaN, 3]) };
    expect(refusal(() => allowedPin(syntheticPlan, {}, nowhere)).code).toBe("not-finite");
  });
});

function range(from: number, to: number, step: number): readonly number[] {
  return Array.from({ length: (to - from) / step + 1 }, (_, index) => from + step * index);
}
