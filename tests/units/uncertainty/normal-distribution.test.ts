import { fc, test } from "@fast-check/vitest";
import stdlibDistribution from "@stdlib/stats-base-dists-normal-cdf";
import stdlibQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { GeometryError } from "brow-geometry";
import { normalDistribution, normalQuantile } from "../../../src/units/internal.js";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

const anyZ = (): fc.Arbitrary<number> => fc.double({ min: -37, max: 37, noNaN: true });
const anyProbability = (): fc.Arbitrary<number> =>
  fc.double({ min: 0, max: 1, noNaN: true, minExcluded: true, maxExcluded: true });

describe("normalDistribution", () => {
  it("agrees with @stdlib to 1e-12, and in the tails relatively", () => {
    for (let z = -37; z <= 37; z += 0.01) {
      const expected = stdlibDistribution(z, 0, 1);
      expectClose(normalDistribution(z), expected, 1e-15);
      expectClose(normalDistribution(z) / expected, 1, 1e-12);
    }
  });

  it.each([
    // Vectors given with JCGM 106:2012, clause 7: inputs from memory, arithmetic exact.
    [1.4, 0.919243, 5e-7],
    [1.6448536269514722, 0.95, 1e-15],
    [1.65, 0.950528531966, 5e-13],
    [1.64, 0.949497416526, 5e-13],
    [0, 0.5, 0],
    [Number.POSITIVE_INFINITY, 1, 0],
    [Number.NEGATIVE_INFINITY, 0, 0],
  ])("at %d is %d", (z, expected, tolerance) => {
    expectClose(normalDistribution(z), expected, tolerance);
  });

  test.prop([anyZ(), anyZ()])("never falls", (one, other) => {
    const [low, high] = one < other ? [one, other] : [other, one];
    expect(normalDistribution(low)).toBeLessThanOrEqual(normalDistribution(high) + 1e-16);
  });

  test.prop([anyZ()])("is symmetric about 1/2", (z) => {
    expectClose(normalDistribution(z) + normalDistribution(-z), 1, 1e-15);
  });

  it("refuses NaN", () => {
    expect(() => normalDistribution(Number.NaN)).toThrow(GeometryError);
  });
});

describe("normalQuantile", () => {
  it("agrees with @stdlib to 1e-12", () => {
    for (let share = 0.0005; share < 1; share += 0.0005) {
      expectClose(normalQuantile(share), stdlibQuantile(share, 0, 1), 1e-12);
    }
    for (const share of [1e-5, 3e-5, 1e-4, 3e-4]) {
      expectClose(normalQuantile(share), stdlibQuantile(share, 0, 1), 1e-12);
    }
  });

  // @stdlib is off by 2e-9 at 1e-10 and infinite at 1e-17: far out the inverse is the judge.
  test.prop([fc.double({ min: -300, max: -1e-9, noNaN: true }), anyProbability()])(
    "is undone by the distribution",
    (exponent, probability) => {
      const far = 10 ** exponent;
      expectClose(normalDistribution(normalQuantile(far)) / far, 1, 1e-11);
      expectClose(normalDistribution(normalQuantile(probability)), probability, 1e-14);
    },
  );

  it("reaches the smallest number there is", () => {
    expectClose(normalQuantile(Number.MIN_VALUE), -38.4674, 1e-4); // from memory
  });

  test.prop([anyProbability(), anyProbability()])("never falls", (one, other) => {
    const [low, high] = one < other ? [one, other] : [other, one];
    expect(normalQuantile(low)).toBeLessThanOrEqual(normalQuantile(high) + 1e-12);
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])("refuses %d", (probability) => {
    expect(() => normalQuantile(probability)).toThrow("needs more than 0 and less than 1");
  });
});
