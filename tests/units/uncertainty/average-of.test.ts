import { fc, test } from "@fast-check/vitest";
import { averageOf, measured } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

describe("averageOf", () => {
  it("divides the uncertainty of n equal measurements by √n", () => {
    expectClose(
      averageOf([measured(10, 0.3), measured(11, 0.3), measured(12, 0.3)]),
      { value: 11, u: 0.3 / Math.sqrt(3) },
      1e-12,
    );
  });

  it("weighs by 1/u²", () => {
    // Weights 4 and 1: (4·10 + 15)/5 = 11, u = 1/√5.
    expectClose(
      averageOf([measured(10, 0.5), measured(15, 1)]),
      { value: 11, u: 5 ** -0.5 },
      1e-12,
    );
  });

  it("lets values without uncertainty outweigh the others", () => {
    expectClose(
      averageOf([measured(10, 0), measured(12, 0), measured(50, 1)]),
      { value: 11, u: 0 },
      0,
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
  ])("never widens, and lies between its values", (measurements) => {
    const { value, u } = averageOf(measurements);
    const values = measurements.map((each) => each.value);
    expect(u).toBeLessThanOrEqual(Math.min(...measurements.map((each) => each.u)) * (1 + 1e-12));
    expect(value).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
    expect(value).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
  });

  it("refuses an empty list and a negative u", () => {
    expect(() => averageOf([])).toThrow("measurements is []; needs at least one measurement");
    expect(() => averageOf([{ value: 1, u: -1 }])).toThrow("u is -1");
  });
});
