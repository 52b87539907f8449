import { rootBetween } from "../../../src/geometry/internal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("rootBetween", () => {
  it("finds the square root of two", () => {
    expect(rootBetween(0, 2, (x) => x * x - 2)).toBeCloseTo(Math.SQRT2, 14);
  });

  it("takes an end that is itself a root", () => {
    expect(rootBetween(1, 3, (x) => x - 1)).toBe(1);
    expect(rootBetween(1, 3, (x) => x - 3)).toBe(3);
  });

  it("has no answer where the signs agree", () => {
    expect(rootBetween(2, 3, (x) => x * x - 2)).toBeUndefined();
  });

  it("closes in on a steep and on a flat root alike", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.constantFrom(1, 3, 5),
        fc.boolean(),
        (root, power, falling) => {
          const sign = falling ? -1 : 1;
          const found = rootBetween(-60, 70, (x) => sign * (x - root) ** power) ?? Number.NaN;
          expect(Math.abs(found - root)).toBeLessThan(power === 1 ? 1e-9 : 0.05);
        },
      ),
    );
  });
});
