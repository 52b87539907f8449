import { fc, test } from "@fast-check/vitest";
import { distance } from "brow-geometry/geometry";
import { type Length, measured, mm, px, scaleFromReference, toMillimetres } from "brow-geometry";
import { measuredPoint, propagate } from "brow-geometry/units";
import { toDegrees } from "../../../src/units/internal.js";
import { describe, expect, it } from "vitest";
import { anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

/** Mean, standard uncertainty of the mean, and correlation of simultaneous readings. */
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const covarianceOfMeans = (one: readonly number[], other: readonly number[]): number =>
  one.reduce(
    (sum, value, index) => sum + (value - mean(one)) * ((other[index] ?? 0) - mean(other)),
    0,
  ) /
  (one.length * (one.length - 1));
const uOfMean = (values: readonly number[]): number => Math.sqrt(covarianceOfMeans(values, values));
const correlation = (one: readonly number[], other: readonly number[]): number =>
  covarianceOfMeans(one, other) / (uOfMean(one) * uOfMean(other));

describe("propagate", () => {
  describe("simultaneous resistance and reactance (JCGM 100:2008, H.2; recomputed)", () => {
    const volts = [5.007, 4.994, 5.005, 4.99, 4.999];
    const amperes = [19.663, 19.639, 19.64, 19.685, 19.678].map((milli) => milli / 1000);
    const phases = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
    const inputs = {
      V: measured(mean(volts), uOfMean(volts)),
      I: measured(mean(amperes), uOfMean(amperes)),
      phase: measured(mean(phases), uOfMean(phases)),
    };
    const impedance = ({ V, I, phase }: { V: number; I: number; phase: number }) => ({
      R: (V / I) * Math.cos(phase),
      X: (V / I) * Math.sin(phase),
      Z: V / I,
    });
    const together = propagate(impedance, inputs, {
      correlations: [
        { between: ["V", "I"], coefficient: correlation(volts, amperes) },
        { between: ["V", "phase"], coefficient: correlation(volts, phases) },
        { between: ["I", "phase"], coefficient: correlation(amperes, phases) },
      ],
    });

    it("gives the published values and uncertainties", () => {
      expectClose(together.value, { R: 127.732, X: 219.847, Z: 254.26 }, 5e-4);
      expectClose(together.u, { R: 0.071, X: 0.295, Z: 0.236 }, 1e-3);
    });

    it("gives the recomputed ones to their last digit", () => {
      expectClose(together.value, { R: 127.73216993, X: 219.84651191, Z: 254.25970195 }, 5e-9);
      expectClose(together.u, { R: 0.07107141, X: 0.29558168, Z: 0.23633613 }, 5e-9);
    });

    it("says how the results vary together: Z² = R² + X² holds for every draw", () => {
      const [R, X, Z] = [together.value.R, together.value.X, together.value.Z];
      expect(together.components).toEqual(["R", "X", "Z"]);
      const [ofR = [], ofX = []] = together.covariance;
      const uZ = Math.sqrt(
        (R * R * (ofR[0] ?? 0) + 2 * R * X * (ofR[1] ?? 0) + X * X * (ofX[1] ?? 0)) / (Z * Z),
      );
      expectClose(uZ, together.u.Z, 1e-9);
    });

    it("is wrong without the correlations, as it should be", () => {
      expectClose(propagate(impedance, inputs).u.R, 0.1945, 5e-5);
    });
  });

  it("handles a ratio times a reference (Sandia National Laboratories, XRF example; recomputed)", () => {
    const result = propagate(({ seen, standard, known }) => (seen / standard) * known, {
      seen: measured(0.182, 0.00093),
      standard: measured(0.1823, 0.00058),
      known: measured(0.6978, 0.0026),
    });
    expectClose(result.value, 0.696651673066, 5e-13);
    expectClose(result.u, 0.004931801999, 5e-12);
  });

  it("agrees with the closed form of pixels to millimetres", () => {
    const result = propagate(({ reference, ends, feature }) => (reference / ends) * feature, {
      reference: measured(11.7, 0.5),
      ends: measured(94, 1),
      feature: measured(210, 1),
    });
    expectClose(result.value, 26.13829787234, 1e-12);
    expectClose(result.u, 1.157821269588, 1e-9);
  });

  describe("two points, 1 px in each coordinate (closed form)", () => {
    const ends = {
      from: measuredPoint(px([1000, 1200]), px(1)),
      to: measuredPoint(px([1300, 1160]), px(1)),
    };

    it("gives a length with u √2", () => {
      const { value, u } = propagate(({ from, to }) => distance(from, to), ends);
      expectClose(value, 302.654919008431, 1e-12);
      expectClose(u, Math.SQRT2, 1e-9);
    });

    it("gives a direction with u √2/d", () => {
      const direction = propagate(
        ({ from, to }) => toDegrees(Math.atan2(to[1] - from[1], to[0] - from[0])),
        ends,
      );
      expectClose(direction.u, 0.2677255956, 1e-9);
    });
  });

  it("takes each axis its own uncertainty, and gives points theirs back", () => {
    const { value, u, components } = propagate(({ at }) => mm([2 * at[0], at[1], at[2] / 2]), {
      at: measuredPoint(mm([14, 22, 4]), [mm(0.3), mm(0.4), mm(2)]),
    });
    expectClose(value, [28, 22, 2], 0);
    expectClose(u, [0.6, 0.4, 1], 1e-12);
    expect(components).toEqual(["x", "y", "depth"]);
  });

  it("gives results that are inputs again", () => {
    const inputs = { at: measuredPoint(mm([14, 22]), mm(0.3)), by: measured(mm(3), mm(0.4)) };
    const moved = propagate(({ at, by }) => mm([at[0] + by, at[1]]), inputs);
    const height = propagate(({ moved: at }) => at[1], { moved });
    const far = propagate(({ moved: at }) => at[0], { moved });
    expectClose([height.u, far.u], [0.3, 0.5], 1e-9);
  });

  it("leaves what is undefined at the centre undefined, and keeps records with points", () => {
    const result = propagate(({ at }) => ({ width: at[0], tail: undefined, at }), {
      at: measuredPoint(mm([14, 22]), mm(0.3)),
    });
    expect(Object.keys(result.u)).toEqual(["width", "tail", "at"]);
    expectClose(result.u, { width: 0.3, tail: undefined, at: [0.3, 0.3] }, 1e-12);
    expect(result.components).toEqual(["width", "at.x", "at.y"]);
  });

  it("takes the slope of the side where a result exists", () => {
    const result = propagate(
      ({ x }) => ({ root: x < 0 ? undefined : 3 * x }),
      { x: measured(0, 1) },
      {
        linearity: "assumed",
      },
    );
    expectClose(result.u, { root: 3 }, 1e-12);
    expect(() =>
      propagate(({ x }) => ({ only: x === 0 ? 1 : undefined }), { x: measured(0, 1) }),
    ).toThrow("propagate: only is missing; needs a result when x changes by");
  });

  it("averages slopes over a corner where it is asked to", () => {
    const corner = ({ x }: { x: number }): number => Math.max(0, x);
    const at = (value: number): number =>
      propagate(corner, { x: measured(value, 1) }, { linearity: "averaged" }).u;
    expectClose([at(-2), at(-0.5), at(0), at(0.5), at(2)], [0, 0.25, 0.5, 0.75, 1], 1e-12);
    const flat = propagate(corner, { x: measured(-0.5, 1) }, { linearity: "assumed" });
    expectClose(flat.u, 0, 0);
  });

  describe("where first order does not hold", () => {
    const towards =
      (baseline: number, u: number): (() => number) =>
      () =>
        propagate(({ from, to }) => Math.atan2(to[1] - from[1], to[0] - from[0]), {
          from: measuredPoint(mm([0, 0]), mm(0)),
          to: measuredPoint(mm([baseline, 0]), mm(u)),
        }).u;

    it("refuses a direction as long as its uncertainty (GUM Supplement 2 style: 10 rad is nonsense)", () => {
      expect(towards(0.001, 0.01)).toThrow("propagateByMonteCarlo");
      const assumed = propagate(
        ({ x, y }) => Math.atan2(y, x),
        {
          x: measured(0.001, 0.01),
          y: measured(0, 0.01),
        },
        { linearity: "assumed" },
      );
      expectClose(assumed.u, 10, 1e-3);
    });

    it("draws the line at five uncertainties", () => {
      expect(towards(4.9, 1)).toThrow("needs inputs so certain that first order holds");
      expectClose(towards(5.1, 1)(), 1 / 5.1, 1e-6);
    });
  });

  describe("correlations", () => {
    const sum = ({ a, b }: { a: number; b: number }): number => a + b;
    const inputs = { a: measured(1, 0.3), b: measured(2, 0.4) };
    const withCoefficient = (coefficient: number): number =>
      propagate(sum, inputs, { correlations: [{ between: ["a", "b"], coefficient }] }).u;

    it.each([
      [0, 0.5],
      [1, 0.7],
      [-1, 0.1],
      [0.5, Math.sqrt(0.09 + 0.16 + 0.12)],
    ])("of %d", (coefficient, expected) => {
      expectClose(withCoefficient(coefficient), expected, 1e-9);
    });

    it("may tie coordinates of points", () => {
      const ends = {
        one: measuredPoint(mm([0, 0]), mm(0.3)),
        other: measuredPoint(mm([10, 0]), mm(0.3)),
      };
      const shift = propagate(({ one, other }) => other[0] - one[0], ends, {
        correlations: [{ between: ["one.x", "other.x"], coefficient: 1 }],
      });
      expectClose(shift.u, 0, 1e-9);
    });

    it.each([
      [
        "an input that does not exist",
        [{ between: ["a", "c"], coefficient: 0.5 }],
        "needs one of a, b",
      ],
      ["an input with itself", [{ between: ["a", "a"], coefficient: 1 }], "two different inputs"],
      ["more than 1", [{ between: ["a", "b"], coefficient: 1.1 }], "a coefficient of −1 to 1"],
      ["NaN", [{ between: ["a", "b"], coefficient: Number.NaN }], "a coefficient of −1 to 1"],
    ])("refuses %s", (_, correlations, message) => {
      expect(() => propagate(sum, inputs, { correlations: correlations as never })).toThrow(
        message,
      );
    });

    it("refuses coefficients that contradict each other", () => {
      const three = { a: measured(0, 1), b: measured(0, 1), c: measured(0, 1) };
      expect(() =>
        propagate(({ a, b, c }) => a + b + c, three, {
          correlations: [
            { between: ["a", "b"], coefficient: 1 },
            { between: ["b", "c"], coefficient: 1 },
            { between: ["a", "c"], coefficient: -1 },
          ],
        }),
      ).toThrow("coefficients that can occur together");
    });
  });

  it("carries a scale and its uncertainty into a length", () => {
    const scale = scaleFromReference(px([0, 0]), px([94, 0]), mm(11.7), {
      u: mm(0.5),
      placement: px(Math.SQRT1_2),
    });
    const length = propagate(({ factor, seen }) => toMillimetres(seen, { ...scale, factor }), {
      factor: measured(scale.factor, scale.u),
      seen: measured(px(210), px(1)),
    });
    expectClose(length.u, 1.157821269588, 1e-9);
  });

  it("takes a result that only rounding moves as certain", () => {
    const { u } = propagate(({ x }) => 50.3 + x - (x + 50.3 - 7), { x: measured(33.3, 0.3) });
    expectClose(u, 0, 1e-9);
  });

  it("does not move inputs without uncertainty", () => {
    let calls = 0;
    propagate(
      ({ x, y }) => {
        calls += 1;
        return x + y;
      },
      { x: measured(1, 0), y: measured(2, 0.1) },
    );
    expect(calls).toBe(1 + 2 + 2);
  });

  it.each([
    ["NaN as a value", { x: { value: Number.NaN, u: 1 } }, "x.value is NaN"],
    ["a negative u", { x: { value: 1, u: -1 } }, "x: u is -1; needs 0 or more"],
  ])("refuses %s", (_, inputs, message) => {
    expect(() => propagate(({ x }) => x, inputs)).toThrow(message);
  });

  it("refuses a missing axis and a result that is no number", () => {
    const at = { value: mm([1, 2, 3]), u: [mm(1), mm(1)] as const };
    expect(() => propagate((inputs) => inputs.at[0], { at })).toThrow("at.depth: u is missing");
    expect(() => propagate(() => Number.NaN, { x: measured(1, 1) })).toThrow(
      "measure(…): value is NaN; needs a finite number",
    );
  });

  test.prop([
    anyFlatPoint<"mm">(100),
    anyFlatPoint<"mm">(100),
    fc.double({ min: 0.01, max: 1, noNaN: true }),
    fc.double({ min: -3, max: 3, noNaN: true }),
  ])("does not care where the face lies or how it is turned", (from, to, u, angle) => {
    fc.pre(distance(from, to) > 20 * u);
    const turned = (at: typeof from): typeof from =>
      mm([
        at[0] * Math.cos(angle) - at[1] * Math.sin(angle) + 7,
        at[0] * Math.sin(angle) + at[1] * Math.cos(angle) - 3,
      ]);
    const uOf = (one: typeof from, other: typeof from): Length<"mm"> =>
      propagate((ends) => distance(ends.one, ends.other), {
        one: measuredPoint(one, mm(u)),
        other: measuredPoint(other, mm(u)),
      }).u;
    expectClose(uOf(from, to), u * Math.SQRT2, 1e-5);
    expectClose(uOf(turned(from), turned(to)), u * Math.SQRT2, 1e-5);
  });

  test.prop([
    fc.array(
      fc.tuple(
        fc.double({ min: -9, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
      ),
      {
        minLength: 1,
        maxLength: 6,
      },
    ),
  ])("adds independent parts of a sum in squares", (parts) => {
    const inputs = Object.fromEntries(
      parts.map(([factor, u], index) => [`part${String(index)}`, measured(factor, u)]),
    );
    const { u } = propagate(
      (values) =>
        parts.reduce(
          (sum, [factor], index) => sum + factor * (values[`part${String(index)}`] ?? 0),
          0,
        ),
      inputs,
    );
    expectClose(u, Math.hypot(...parts.map(([factor, each]) => factor * each)), 1e-6);
  });
});
