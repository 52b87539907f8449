import { depthAt } from "brow-geometry/landmarks";
import { mm, type Skin } from "brow-geometry";
import { onSkin } from "../../../src/landmarks/internal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { skinDepth, skinSlope } from "../../../src/landmarks/skin/skin.js";

const modelled: Skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 };
const fitted: Skin = {
  kind: "fitted",
  atMidline: mm(16),
  slope: 0.05,
  right: { second: 0.0035, fourth: 1.3e-6 },
  left: { second: 0.003, fourth: 1.6e-6 },
  relativeU: 0.1,
};

describe("depth of the skin", () => {
  it("is −|x|³/width² where it is modelled, the same on both sides and at every height", () => {
    expect(depthAt(mm([50, 20]), modelled)).toBeCloseTo(-(50 ** 3) / 87.8 ** 2, 12);
    expect(depthAt(mm([-50, -3]), modelled)).toBe(depthAt(mm([50, 20]), modelled));
    expect(depthAt(mm([0, 0]), modelled)).toBeCloseTo(0, 12);
  });

  it("follows each side's own curve where it is fitted", () => {
    expect(depthAt(mm([0, 0]), fitted)).toBe(16);
    expect(depthAt(mm([40, 9]), fitted)).toBeCloseTo(16 + 2 - 4.8 - 4.096, 12);
    expect(depthAt(mm([-40, 9]), fitted)).toBeCloseTo(16 - 2 - 5.6 - 3.328, 12);
  });

  it("is 0 where it is flat", () => {
    expect(onSkin(mm([50, 20, 7]), { kind: "flat" })).toEqual([50, 20, 0]);
  });

  it("replaces the depth of a point", () => {
    expect(onSkin(mm([0, 3, 99]), fitted)).toEqual([0, 3, 16]);
  });

  it("has the slope of its own curve", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -80, max: 80, noNaN: true }),
        fc.constantFrom<Skin>(modelled, fitted, { kind: "flat" }),
        (x, skin) => {
          const step = 1e-4;
          const rise = (skinDepth(x + step, skin) - skinDepth(x - step, skin)) / (2 * step);
          expect(skinSlope(x, skin)).toBeCloseTo(rise, 5);
        },
      ),
    );
  });
});
