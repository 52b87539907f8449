import { mm } from "brow-geometry";
import { compareMaps } from "brow-geometry/mapping";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

const face = syntheticFace();
const map = (up: number, outward = 0) => ({
  face,
  dots: { right: {}, left: { tailEnd: mm([57 + outward, 18 + up]) } },
});

describe("two artists' maps of one client", () => {
  it("are one where they are the same", () => {
    const { dots } = compareMaps(syntheticPlan, syntheticPlan);
    expect(dots).toHaveLength(14);
    expect(dots.filter(({ told }) => told)).toEqual([]);
    expect(Math.max(...dots.map(({ apart }) => apart.value))).toBeLessThan(1e-9);
  });

  it("are told apart by what their readings can tell, both axes together", () => {
    const [dot] = compareMaps(map(0), map(3, 4)).dots;
    // 3 up and 4 outward are 5 apart.
    expect(dot?.apart.value).toBeCloseTo(5, 9);
    expect(dot?.up.value).toBeCloseTo(3, 9);
    expect(dot?.outward.value).toBeCloseTo(4, 9);
    expect(dot?.told).toBe(true);
  });

  it("are told apart from √5.99 uncertainties on: chi-square of two at 95 %, 5.991", () => {
    const told = [0.5, 0.8, 1, 1.05, 1.1, 1.15, 1.2, 1.25, 1.3, 1.5, 2].map((by) => {
      const [dot] = compareMaps(map(0), map(by)).dots;
      const times = (dot?.up.value ?? 0) / (dot?.up.u ?? 0);
      expect(dot?.told).toBe(times > Math.sqrt(5.991));
      return dot?.told;
    });
    expect(new Set(told).size).toBe(2);
  });

  it("are as far apart whichever comes first", () => {
    fc.assert(
      fc.property(anyBetween(-4, 4), anyBetween(-4, 4), (up, outward) => {
        const [there] = compareMaps(map(0), map(up, outward)).dots;
        const [back] = compareMaps(map(up, outward), map(0)).dots;
        expect(there?.apart.value).toBeCloseTo(back?.apart.value ?? Number.NaN, 9);
      }),
      { numRuns: 20 },
    );
  });

  it("take the uncertainty of dots as told", () => {
    // Two raters on photographs: 0.36 mm (Reliability of Periocular Anthropometry, 2019, 46 adults).
    const [dot] = compareMaps(map(0), map(1), { dotU: mm(0.36 * Math.SQRT2) }).dots;
    expect(dot?.up.u).toBeGreaterThan(0.36 * Math.SQRT2);
    expect(dot?.told).toBe(false);
  });

  it("are refused where they share no dot", () => {
    const none = { face, dots: { right: {}, left: {} } };
    const { code, message } = refusal(() => compareMaps(map(0), none));
    expect(code).toBe("missing-landmark");
    expect(message).toContain("compareMaps: dots");
  });
});
