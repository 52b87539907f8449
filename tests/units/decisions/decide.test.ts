import { fc, test } from "@fast-check/vitest";
import { averageOf, decide, type Decision, type Limits, measured, say } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

const ONE_EACH_WAY: Limits = { lower: -1, upper: 1 };

/** Standard uncertainty of a placement by hand (TEM of the same rater, 46 adults, 2019). */
const BY_HAND = 0.26;
/** A ruler with half millimetres, read to the nearest mark: GUM 4.3.7. */
const BY_RULER = 0.5 / (2 * Math.sqrt(3));
/** What a left–right difference of two such readings carries. */
const ofDifference = (u: number): number => u * Math.SQRT2;

describe("decide", () => {
  describe("probability of conformance (JCGM 106:2012, clause 7; inputs from memory)", () => {
    it.each([
      [-5.47, 0.05, { upper: -5.4 }, 0.919243],
      [509.7, 8.6, { lower: 490 }, 0.98901],
      [13.6, 1.8, { lower: 12.5, upper: 16.3 }, 0.66263],
    ])("of %d ± %d", (value, u, limits, expected) => {
      expectClose(decide(measured(value, u), limits).probability, expected, 5e-7);
    });
  });

  describe("guard band for 95 % under two limits (table of vectors, exact solution)", () => {
    it.each([
      [4, 1.796213],
      [4.5, 1.667682],
      [5, 1.648767],
      [6, 1.644918],
      [8, 1.644854],
      [100, 1.644854],
    ])("at a width of %d u is %d u", (width, expected) => {
      const { guardBand, acceptable } = decide(measured(0, 1), {
        lower: -width / 2,
        upper: width / 2,
      });
      expectClose(guardBand, expected, 5e-7);
      expectClose(acceptable, width / 2 - expected, 5e-7);
    });

    it("closes at 3.919928 u, under which nothing can be accepted", () => {
      const at = (width: number): Decision =>
        decide(measured(0, 1), { lower: -width / 2, upper: width / 2 });
      expect(at(3.91992).guardBand).toBeUndefined();
      expect(at(3.91992).acceptable).toBeUndefined();
      expect(at(3.91992).outcome).toBe("undecided");
      expectClose(at(3.91993).guardBand, 3.91993 / 2, 5e-3);
      expect(at(3.91993).outcome).toBe("within");
    });
  });

  it("has three outcomes (ISO 14253-1, from memory)", () => {
    const of = (value: number): string => decide(measured(value, 0.1), ONE_EACH_WAY).outcome;
    expect([0.8, 0.9, 1.1, 1.2].map(of)).toEqual(["within", "undecided", "undecided", "outside"]);
    expect([-0.8, -0.9, -1.1, -1.2].map(of)).toEqual([
      "within",
      "undecided",
      "undecided",
      "outside",
    ]);
  });

  it("never calls a value outside that lies between the limits, however coarse it is", () => {
    expect(decide(measured(0, 100), ONE_EACH_WAY).outcome).toBe("undecided");
  });

  describe("greatest differences that a measurement can accept", () => {
    it.each([
      ["1 mm, one placement by hand", 1, ofDifference(BY_HAND), 0.39],
      ["1 mm, the mean of three", 1, ofDifference(BY_HAND) / Math.sqrt(3), 0.65],
      ["1 mm, by ruler", 1, ofDifference(BY_RULER), 0.66],
      ["0.5 mm of thickness, by ruler", 0.5, ofDifference(BY_RULER), 0.16],
    ])("%s", (_, tolerance, u, expected) => {
      const { acceptable } = decide(measured(0, u), { lower: -tolerance, upper: tolerance });
      expectClose(acceptable, expected, 0.005);
    });

    it.each([
      ["1 mm, from a detector with 1.2 mm a point", 1, ofDifference(1.2)],
      ["0.5 mm of thickness, between points placed by hand", 0.5, ofDifference(BY_HAND)],
    ])("%s: none", (_, tolerance, u) => {
      const { acceptable } = decide(measured(0, u), { lower: -tolerance, upper: tolerance });
      expect(acceptable).toBeUndefined();
    });

    it("under one limit is the last value accepted", () => {
      expectClose(decide(measured(0, 1), { upper: 5 }).acceptable, 5 - 1.6448536, 1e-6);
      expectClose(decide(measured(0, 1), { lower: 5 }).acceptable, 5 + 1.6448536, 1e-6);
    });
  });

  it("looks at the value alone under the simple rule", () => {
    const at = (value: number): Decision =>
      decide(measured(value, 5), ONE_EACH_WAY, { rule: "simple" });
    expect([at(0.99).outcome, at(1).outcome, at(1.01).outcome]).toEqual([
      "within",
      "within",
      "outside",
    ]);
    expectClose([at(0).guardBand, at(0).acceptable], [0, 1], 0);
  });

  it("is certain of values without uncertainty", () => {
    const at = (value: number): Decision => decide(measured(value, 0), ONE_EACH_WAY);
    expect([at(1).outcome, at(1.001).outcome]).toEqual(["within", "outside"]);
    expectClose([at(1).probability, at(1.001).probability, at(1).guardBand], [1, 0, 0], 0);
  });

  describe("advice", () => {
    it("counts the placements whose mean would decide", () => {
      const once = measured(0.6, ofDifference(BY_HAND));
      const { advice } = decide(once, ONE_EACH_WAY);
      expect(advice?.code).toBe("repeat-placements");
      const placements = advice?.values["placements"] as number;
      const mean = (count: number): Decision =>
        decide(averageOf(Array.from({ length: count }, () => once)), ONE_EACH_WAY);
      expect(mean(placements).outcome).toBe("within");
      expect(mean(placements - 1).outcome).toBe("undecided");
      expect(advice && say(advice)).toContain(`mean of ${String(placements)}`);
    });

    it("asks for a better instrument where averaging is hopeless", () => {
      const { advice } = decide(measured(0.98, 1.7), ONE_EACH_WAY);
      expect(advice?.code).toBe("measure-better");
      const better = measured(0.98, (advice?.values["u"] as number) * (1 - 1e-9));
      expect(decide(better, ONE_EACH_WAY).outcome).toBe("within");
    });

    it("is silent on a limit, where no uncertainty is small enough, and where it is decided", () => {
      expect(decide(measured(1, 0.3), ONE_EACH_WAY).advice).toBeUndefined();
      expect(decide(measured(0, 0.3), ONE_EACH_WAY).advice).toBeUndefined();
    });
  });

  describe("properties", () => {
    const anyValue = (): fc.Arbitrary<number> => fc.double({ min: -3, max: 3, noNaN: true });
    const anyU = (): fc.Arbitrary<number> => fc.double({ min: 0, max: 2, noNaN: true });
    const anyConfidence = (): fc.Arbitrary<number> =>
      fc.double({ min: 0.51, max: 0.999, noNaN: true });
    const anyLimits = (): fc.Arbitrary<Limits> =>
      fc
        .record(
          {
            lower: fc.double({ min: -2, max: 0, noNaN: true }),
            upper: fc.double({ min: 0, max: 2, noNaN: true }),
          },
          { requiredKeys: [] },
        )
        .filter(({ lower, upper }) => lower !== undefined || upper !== undefined);
    const widened = ({ lower, upper }: Limits, by: number): Limits => ({
      ...(lower === undefined ? {} : { lower: lower - by }),
      ...(upper === undefined ? {} : { upper: upper + by }),
    });

    test.prop([
      anyValue(),
      anyU(),
      anyLimits(),
      anyConfidence(),
      fc.double({ min: 0, max: 3, noNaN: true }),
      fc.constantFrom("guarded" as const, "simple" as const),
    ])("a wider tolerance keeps what is within", (value, u, limits, confidence, by, rule) => {
      const options = { rule, confidence };
      fc.pre(decide(measured(value, u), limits, options).outcome === "within");
      expect(decide(measured(value, u), widened(limits, by), options).outcome).toBe("within");
    });

    test.prop([anyValue(), anyU(), anyU(), anyLimits(), anyConfidence()])(
      "more uncertainty never turns undecided into within",
      (value, u, more, limits, confidence) => {
        fc.pre(decide(measured(value, u), limits, { confidence }).outcome === "undecided");
        expect(decide(measured(value, u + more), limits, { confidence }).outcome).not.toBe(
          "within",
        );
      },
    );

    test.prop([anyValue(), anyU(), anyLimits(), anyConfidence()])(
      "a mirrored question has the same answer",
      (value, u, limits, confidence) => {
        const { lower, upper } = limits;
        const mirrored: Limits = {
          ...(upper === undefined ? {} : { lower: -upper }),
          ...(lower === undefined ? {} : { upper: -lower }),
        };
        const one = decide(measured(value, u), limits, { confidence });
        const other = decide(measured(-value, u), mirrored, { confidence });
        expect(other.outcome).toBe(one.outcome);
        expectClose(other.guardBand, one.guardBand, 1e-12);
      },
    );

    test.prop([
      fc.double({ min: -2, max: 2, noNaN: true }),
      fc.double({ min: 0.1, max: 4, noNaN: true }),
      fc.double({ min: 0.01, max: 0.15, noNaN: true }),
      anyConfidence(),
    ])("the guard band marks where acceptance ends", (lower, width, share, confidence) => {
      const limits = { lower, upper: lower + width };
      const at = (value: number): Decision =>
        decide(measured(value, share * width), limits, { confidence });
      const guardBand = at(0).guardBand as number;
      expectClose(at(limits.upper - guardBand).probability, confidence, 1e-9);
      expectClose(at(limits.lower + guardBand).probability, confidence, 1e-9);
    });
  });

  it.each([
    ["no limits", {}, 0.95, "limits is {}; needs a lower limit, an upper limit, or both"],
    ["crossed limits", { lower: 2, upper: 1 }, 0.95, "limits.lower is 2; needs at most"],
    ["NaN as a limit", { upper: Number.NaN }, 0.95, "limits.upper is NaN"],
    ["even odds", { upper: 1 }, 0.5, "confidence is 0.5; needs more than 0.5"],
    ["certainty", { upper: 1 }, 1, "confidence is 1; needs more than 0.5 and less than 1"],
  ])("refuses %s", (_, limits, confidence, message) => {
    expect(() => decide(measured(0, 1), limits, { confidence })).toThrow(message);
  });

  it("refuses a value that only looks measured", () => {
    expect(() => decide({ value: 1, u: -1 }, ONE_EACH_WAY)).toThrow("u is -1; needs 0 or more");
  });
});

describe("a value of whose uncertainty nothing is known", () => {
  const value = { value: 0.1, u: Infinity };

  it("is undecided by proof, and decided at face value only where that was asked for", () => {
    expect(decide(value, { lower: -1, upper: 1 }).outcome).toBe("undecided");
    expect(decide(value, { upper: -1 }).outcome).toBe("undecided");
    expect(decide(value, { upper: 1 })).not.toHaveProperty("acceptable");
    expect(decide(value, { upper: 1 })).not.toHaveProperty("advice");
    expect(decide(value, { lower: -1, upper: 1 }, { rule: "simple" }).outcome).toBe("within");
  });
});
