import { lengthBetween, mm, type Skin } from "brow-geometry";
import { lengthOf } from "brow-geometry/landmarks";
import { onSkin, tapeOn } from "../../../src/landmarks/internal.js";
import { spaceDistance } from "brow-geometry/geometry";
import { integrate } from "../../../src/geometry/internal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFlatPoint, anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const modelled: Skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 };
const fitted: Skin = {
  kind: "fitted",
  atMidline: mm(16),
  slope: 0.05,
  right: { second: 0.0035, fourth: 1.3e-6 },
  left: { second: 0.003, fourth: 1.6e-6 },
  relativeU: 0.1,
};
const skins = fc.constantFrom<Skin>(modelled, fitted, { kind: "flat" });
const along = { path: "along" } as const;

describe("a length on the skin", () => {
  it("by ruler is the straight line between both ends lifted onto it", () => {
    const [from, to] = [mm([14, 22]), mm([44, 26])];
    const drop = (44 ** 3 - 14 ** 3) / 87.8 ** 2;
    expect(lengthBetween(from, to, modelled)).toBeCloseTo(Math.hypot(30, 4, drop), 12);
  });

  // On z = −|x|³/L² the tape is ∫√(1 + 9x⁴/L⁴) dx: here by ten thousand midpoints.
  it("by tape over a level line is the cubic's arc length", () => {
    let sum = 0;
    const step = (58 - 14) / 1e4;
    for (let index = 0; index < 1e4; index += 1) {
      const x = 14 + (index + 0.5) * step;
      sum += step * Math.sqrt(1 + (9 * x ** 4) / 87.8 ** 4);
    }
    expect(lengthBetween(mm([14, 20]), mm([58, 20]), modelled, along)).toBeCloseTo(sum, 6);
  });

  it("on the photo is what a frontal photo shows, whatever the skin and the points' depth", () => {
    expect(lengthBetween(mm([0, 0, 5]), mm([3, 4, -9]), modelled, { on: "photo" })).toBe(5);
    expect(lengthBetween(mm([0, 0]), mm([3, 4]), { kind: "flat" }, along)).toBe(5);
    expect(
      lengthOf(
        mm([
          [0, 0],
          [3, 4],
          [3, 6],
        ]),
        modelled,
        { on: "photo" },
      ),
    ).toBe(7);
  });

  it("measures a point with depth and one without alike", () => {
    const [flat, deep] = [mm([14, 22]), mm([14, 22, 50])];
    for (const options of [{}, along, { on: "photo" } as const]) {
      expect(lengthBetween(deep, mm([50, 20]), fitted, options)).toBe(
        lengthBetween(flat, mm([50, 20]), fitted, options),
      );
    }
  });

  it("grows from photo to ruler to tape, and is the same both ways", () => {
    fc.assert(
      fc.property(anyFlatPoint<"mm">(65), anyFlatPoint<"mm">(65), skins, (from, to, skin) => {
        const photo = lengthBetween(from, to, skin, { on: "photo" });
        const ruler = lengthBetween(from, to, skin);
        const tape = lengthBetween(from, to, skin, along);
        expect(ruler).toBeGreaterThanOrEqual(photo);
        expect(tape).toBeGreaterThanOrEqual(ruler - 1e-9);
        expect(ruler).toBe(spaceDistance(onSkin(from, skin), onSkin(to, skin)));
        expect(lengthBetween(to, from, skin)).toBe(ruler);
        expect(lengthBetween(to, from, skin, along)).toBeCloseTo(tape, 9);
      }),
    );
  });

  it("by tape adds up over the points of a line, across the midline too", () => {
    fc.assert(
      fc.property(
        anyFlatPoint<"mm">(65),
        anyFlatPoint<"mm">(65),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        skins,
        (from, to, share, skin) => {
          const middle = mm([
            from[0] + share * (to[0] - from[0]),
            from[1] + share * (to[1] - from[1]),
          ]);
          const whole = lengthBetween(from, to, skin, along);
          expect(lengthOf([from, middle, to], skin)).toBeCloseTo(whole, 8);
        },
      ),
    );
  });

  it("by a tape that knows another line is the same to the last digit", () => {
    fc.assert(
      fc.property(
        anyPolyline<"mm">(65),
        fc.nat(),
        anyFlatPoint<"mm">(65),
        skins,
        (known, index, moved, skin) => {
          const line = known.map((at, which) => (which === index % known.length ? moved : at));
          expect(tapeOn(skin, known)(line)).toBe(lengthOf(line, skin));
        },
      ),
    );
  });

  it("by tape agrees with the integral over each half of a stretch across the midline", () => {
    const half = (to: number): number =>
      integrate(0, to, (x) => Math.sqrt(1 + (9 * x ** 4) / 87.8 ** 4));
    expectClose(
      lengthBetween(mm([-30, 5]), mm([40, 5]), modelled, along),
      half(30) + half(40),
      1e-9,
    );
  });

  it("of a point drawn twice is nothing", () => {
    const at = mm([30, 20]);
    expect(lengthBetween(at, at, fitted)).toBe(0);
    expect(lengthBetween(at, at, fitted, along)).toBe(0);
    expect(lengthOf([at, at, mm([31, 20])], fitted)).toBeCloseTo(
      lengthBetween(at, mm([31, 20]), fitted, along),
      12,
    );
  });

  it("of a line of one point is refused", () => {
    expect(refusal(() => lengthOf([mm([1, 2])], modelled)).code).toBe("wrong-count");
    expect(refusal(() => lengthOf([mm([1, 2]), mm([1, Number.NaN])], modelled)).code).toBe(
      "not-finite",
    );
  });
});
