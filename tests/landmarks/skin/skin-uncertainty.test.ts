import { deepen } from "../../../src/landmarks/internal.js";
import { depthAt, skinUncertainty } from "brow-geometry/landmarks";
import { lengthBetween, mm, type Skin, skinOf } from "brow-geometry";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalFace, withoutDepth } from "../../support/brow-depth.js";

const measured = skinOf(canonicalFace());
const modelled = skinOf(withoutDepth(canonicalFace()));
const flat: Skin = { kind: "flat" };

describe("the uncertainty of a skin", () => {
  it("is 6 % of the model's width, so 12 % of its depth; 10 % of a detector's depth; 0 of a measured one", () => {
    const source = {
      markup: "mesh-478",
      uncertainty: { default: mm(1.3) },
      ringFactor: { value: 1, u: 0 },
    };
    const estimated = skinOf({ ...canonicalFace(), source: { ...source, depth: "estimated" } });
    expect(skinUncertainty(modelled)).toBe(0.12);
    expect(skinUncertainty(estimated)).toBe(0.1);
    expect(skinUncertainty(measured)).toBe(0);
    expect(skinUncertainty(flat)).toBe(0);
  });

  it("is carried into a length by deepening the skin: 6 % of the width is what 12 % of the depth is", () => {
    if (modelled.kind !== "modelled") throw new Error(modelled.kind);
    const [arch, tailEnd] = [mm([45, 25]), mm([57, 18])];
    const wider: Skin = { ...modelled, width: mm(modelled.width * 1.06) };
    const shallower = deepen(modelled, 1 / 1.06 ** 2);
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
        fc.constantFrom(measured, modelled, flat),
        (x, factor, skin) => {
          const at = mm([x, 20]);
          expect(depthAt(at, deepen(skin, factor))).toBeCloseTo(factor * depthAt(at, skin), 9);
        },
      ),
    );
  });
});
