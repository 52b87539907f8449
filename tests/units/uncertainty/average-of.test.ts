import { fc, test } from "@fast-check/vitest";
import { averageOf, measured } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

describe("averageOf", () => {
  it("divides the uncertainty of n equal measurements by √n", () => {
    expectClose(
      averageOf([measured(10.8, 0.3), measured(11, 0.3), measured(11.2, 0.3)]),
      { value: 11, u: 0.3 / Math.sqrt(3) },
      1e-12,
    );
  });

  it("weighs by 1/u²", () => {
    // Weights 4 and 1: (4·10.8 + 11.8)/5 = 11, u = 1/√5; the squares of ratios, 0.16 + 0.64, are under 1.
    expectClose(
      averageOf([measured(10.8, 0.5), measured(11.8, 1)]),
      { value: 11, u: 5 ** -0.5 },
      1e-12,
    );
  });

  it("grows by the Birge ratio where values scatter more than they say", () => {
    // Squares of ratios (1/0.3)² twice over n − 1 = 2: ratio 1/0.3, u = 0.3/√3 / 0.3 = 1/√3.
    expectClose(
      averageOf([measured(10, 0.3), measured(11, 0.3), measured(12, 0.3)]),
      { value: 11, u: 1 / Math.sqrt(3) },
      1e-12,
    );
    // Weights 4 and 1: mean 11; squares of ratios 4 + 16 over 1: ratio √20, u = √20/√5 = 2.
    expectClose(averageOf([measured(10, 0.5), measured(15, 1)]), { value: 11, u: 2 }, 1e-12);
  });

  it("lets values without uncertainty outweigh the others", () => {
    expectClose(
      averageOf([measured(11, 0), measured(11, 0), measured(50, 1)]),
      { value: 11, u: 0 },
      0,
    );
    // 10 and 12 alone: the standard error of their mean is √2/√2.
    expectClose(
      averageOf([measured(10, 0), measured(12, 0), measured(50, 1)]),
      { value: 11, u: 1 },
      1e-12,
    );
  });

  test.prop([
    fc.array(
      fc.record({
        value: fc.double({ min: -100, max: 100, noNaN: true }),
        u: fc.double({ min: 1e-3, max: 10, noNaN: true }),
      }),
      { minLength: 1, maxLength: 8 },
    ),
  ])("is as wide as its values say or as they scatter, and lies between them", (measurements) => {
    const { value, u } = averageOf(measurements);
    const values = measurements.map((each) => each.value);
    const stated = measurements.reduce((sum, each) => sum + each.u ** -2, 0) ** -0.5;
    const squares = measurements.reduce(
      (sum, each) => sum + ((each.value - value) / each.u) ** 2,
      0,
    );
    const ratio = Math.sqrt(squares / Math.max(1, measurements.length - 1));
    expectClose(u, stated * Math.max(1, ratio), 1e-9 * (stated + u));
    expect(value).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
    expect(value).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
  });

  it("refuses an empty list and a negative u", () => {
    expect(() => averageOf([])).toThrow("measurements is []; needs at least one measurement");
    expect(() => averageOf([{ value: 1, u: -1 }])).toThrow("u is -1");
  });
});
