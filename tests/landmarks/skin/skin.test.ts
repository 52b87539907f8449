import fc from "fast-check";
import { depthAt, skinUncertainty } from "brow-geometry/landmarks";
import { lengthBetween, mm, type Skin, skinOf } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { spaceDistance } from "brow-geometry/geometry";
import {
  atEyeCorner,
  deepen,
  numbersOf,
  onSkin,
  skinWith,
} from "../../../src/landmarks/internal.js";
import { skinDepth, skinSlope } from "../../../src/landmarks/skin/skin.js";
import {
  CANONICAL_EXOCANTHION,
  CANONICAL_UPPER,
  canonicalFace,
  withoutDepth,
} from "../../support/brow-depth.js";
import { expectClose } from "../../support/close.js";

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

const measured = skinOf(canonicalFace());
const canonical = skinOf(withoutDepth(canonicalFace()));
const flat: Skin = { kind: "flat" };

describe("the uncertainty of a skin", () => {
  it("is 6 % of the model's width, so 12 % of its depth; 10 % of a detector's depth; 0 of a measured one", () => {
    const source = {
      markup: "mesh-478",
      uncertainty: { default: mm(1.3) },
      ringFactor: { value: 1, u: 0 },
    };
    const estimated = skinOf({ ...canonicalFace(), source: { ...source, depth: "estimated" } });
    expect(skinUncertainty(canonical)).toBe(0.12);
    expect(skinUncertainty(estimated)).toBe(0.1);
    expect(skinUncertainty(measured)).toBe(0);
    expect(skinUncertainty(flat)).toBe(0);
  });

  it("is carried into a length by deepening the skin: 6 % of the width is what 12 % of the depth is", () => {
    if (canonical.kind !== "modelled") throw new Error(canonical.kind);
    const [arch, tailEnd] = [mm([45, 25]), mm([57, 18])];
    const wider: Skin = { ...canonical, width: mm(canonical.width * 1.06) };
    const shallower = deepen(canonical, 1 / 1.06 ** 2);
    expect(lengthBetween(arch, tailEnd, shallower)).toBeCloseTo(
      lengthBetween(arch, tailEnd, wider),
      12,
    );
  });
});

describe("a deepened skin", () => {
  it("falls back so many times as far everywhere", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -70, max: 70, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.constantFrom(measured, canonical, flat),
        (x, factor, skin) => {
          const at = mm([x, 20]);
          expect(depthAt(at, deepen(skin, factor))).toBeCloseTo(factor * depthAt(at, skin), 9);
        },
      ),
    );
  });
});

describe("the numbers of a skin", () => {
  it.each([
    ["flat", flat],
    ["modelled", canonical],
    ["fitted", measured],
  ])("give a %s one back", (_, skin) => {
    const again = skinWith(numbersOf(skin), skin);
    for (const x of [-55, -20, 0, 35, 60]) {
      expect(depthAt(mm([x, 20]), again)).toBeCloseTo(depthAt(mm([x, 20]), skin), 12);
    }
  });
});

const exocanthion = mm(CANONICAL_EXOCANTHION);
const tailEnd = mm(CANONICAL_UPPER[4] ?? [0, 0, 0]);
// Straight between the two vertices of the canonical face mesh.
const truth = spaceDistance(exocanthion, tailEnd);

describe("the outer eye corner against the skin of the brow", () => {
  it("keeps its own depth where the skin is fitted", () => {
    const skin = skinOf(canonicalFace());
    expect(atEyeCorner(exocanthion, skin)).toBe(exocanthion);
    expectClose(spaceDistance(exocanthion, onSkin(tailEnd, skin)), truth, 0.2);
  });

  it("is set back into the orbit where it is modelled: lifted onto the brow's skin it would read long", () => {
    const skin = skinOf(withoutDepth(canonicalFace()));
    const flat = mm([CANONICAL_EXOCANTHION[0], CANONICAL_EXOCANTHION[1]]);
    const toTail = (from: typeof exocanthion): number => spaceDistance(from, onSkin(tailEnd, skin));
    expectClose(toTail(atEyeCorner(flat, skin)), truth, 0.1);
    expect(toTail(onSkin(flat, skin)) - truth).toBeGreaterThan(3);
    expect(atEyeCorner(exocanthion, skin)).toEqual(atEyeCorner(flat, skin));
  });

  it("is set back alike on both sides", () => {
    const skin = skinOf(withoutDepth(canonicalFace()));
    expect(atEyeCorner(mm([-44, 1]), skin)[2]).toBe(atEyeCorner(mm([44, 1]), skin)[2]);
  });

  it("is flat on a flat skin", () => {
    expect(atEyeCorner(exocanthion, { kind: "flat" })).toEqual([44.45, 26.6, 0]);
  });
});
