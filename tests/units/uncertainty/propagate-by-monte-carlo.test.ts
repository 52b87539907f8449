import { averageOf, measured, mm } from "brow-geometry";
import { distance } from "brow-geometry/geometry";
import {
  type MonteCarloResult,
  measuredPoint,
  propagate,
  propagateByMonteCarlo,
} from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const SEED = 20_080;

describe("propagateByMonteCarlo", () => {
  describe("sum of four (JCGM 101:2008, 9.2)", () => {
    const four = {
      a: measured(0, 1),
      b: measured(0, 1),
      c: measured(0, 1),
      d: measured(0, 1),
    };
    const sumOf = (kind: "normal" | "rectangular"): MonteCarloResult<number> =>
      propagateByMonteCarlo(({ a, b, c, d }) => a + b + c + d, four, {
        seed: SEED,
        draws: 100_000,
        distributions: { a: kind, b: kind, c: kind, d: kind },
      });

    it.each([
      ["normal", 3.92],
      ["rectangular", 3.88],
    ] as const)("%s: 95 % within ±%d", (kind, halfWidth) => {
      const { value, u, interval } = sumOf(kind);
      expectClose([value, u], [0, 2], 0.02);
      expectClose((interval[1] - interval[0]) / 2, halfWidth, 0.03);
    });
  });

  it("tells how uncertain a direction is that is as short as its uncertainty (GUM Supplement 2 style)", () => {
    const { u } = propagateByMonteCarlo(
      ({ x, y }) => Math.atan2(y, x),
      { x: measured(0.001, 0.01), y: measured(0, 0.01) },
      { seed: SEED, draws: 100_000 },
    );
    expectClose(u, 1.744, 0.01);
  });

  it("agrees with first order where that holds", () => {
    const inputs = {
      start: measuredPoint(mm([14, 20, 1]), [mm(0.3), mm(0.3), mm(1)]),
      arch: measuredPoint(mm([38, 27, -2]), mm(0.3)),
      scale: measured(1, 0.02),
    };
    const measure = ({
      start,
      arch,
      scale,
    }: {
      start: readonly number[];
      arch: readonly number[];
      scale: number;
    }) => ({
      width: scale * ((arch[0] ?? 0) - (start[0] ?? 0)),
      height: scale * ((arch[1] ?? 0) - (start[1] ?? 0)),
    });
    const drawn = propagateByMonteCarlo(measure, inputs, { seed: SEED, draws: 50_000 });
    const first = propagate(measure, inputs);
    expectClose(drawn.value, first.value, 0.02);
    expectClose(drawn.u, first.u, 0.01);
    expectClose(drawn.covariance, first.covariance, 0.02);
    expect(drawn.components).toEqual(["width", "height"]);
  });

  it("draws what varies together together", () => {
    const inputs = { a: measured(0, 1), b: measured(0, 2) };
    const { covariance } = propagateByMonteCarlo(({ a, b }) => ({ a, b }), inputs, {
      seed: SEED,
      draws: 50_000,
      correlations: [{ between: ["a", "b"], coefficient: -0.8 }],
    });
    expectClose(
      covariance,
      [
        [1, -1.6],
        [-1.6, 4],
      ],
      0.1,
    );
  });

  it("finds the shortest interval of a lopsided result", () => {
    // The square of a standard normal: the shortest 95 % begin at 0 and end at its 95 % quantile,
    // which is 1.959964².
    const { interval } = propagateByMonteCarlo(
      ({ z }) => z * z,
      { z: measured(0, 1) },
      {
        seed: SEED,
        draws: 100_000,
      },
    );
    expectClose(interval, [0, 3.8415], 0.08);
  });

  it("averages as averageOf says", () => {
    const readings = [measured(3.8, 0.4), measured(4, 0.4), measured(4.2, 0.4)];
    const drawn = propagateByMonteCarlo(
      ({ a, b, c }) => (a + b + c) / 3,
      Object.fromEntries(readings.map((reading, index) => ["abc"[index], reading])) as {
        a: (typeof readings)[0];
        b: (typeof readings)[0];
        c: (typeof readings)[0];
      },
      { seed: SEED },
    );
    expectClose([drawn.value, drawn.u], [averageOf(readings).value, averageOf(readings).u], 0.01);
  });

  it("describes what exists in some draws by those, and counts them", () => {
    const drawn = propagateByMonteCarlo(
      ({ x }) => ({ root: x < 0 ? undefined : Math.sqrt(x), none: undefined, x }),
      { x: measured(0.5, 1) },
      { seed: SEED },
    );
    expect(drawn.components).toEqual(["root", "x"]);
    // Φ(0.5) of the draws lie above 0.
    expectClose(drawn.answered, [0.6915, 1], 0.02);
    expect(drawn.value.none).toBeUndefined();
    expect(drawn.value.root).toBeGreaterThan(0);
  });

  it("repeats itself with the same seed, and not with another", () => {
    const draw = (seed: number): number =>
      propagateByMonteCarlo(({ x }) => x, { x: measured(0, 1) }, { seed }).value;
    expect(draw(1)).toBe(draw(1));
    expect(draw(1)).not.toBe(draw(2));
  });

  it("gives points and records intervals for every coordinate", () => {
    const at = measuredPoint(mm([10, 20]), [mm(1), mm(2)]);
    const place = propagateByMonteCarlo((inputs) => inputs.at, { at }, { seed: SEED });
    expectClose(
      place.interval,
      [
        [8.04, 11.96],
        [16.08, 23.92],
      ],
      0.25,
    );
    const record = propagateByMonteCarlo(
      (inputs) => ({ at: inputs.at, far: distance(inputs.at, mm([0, 0])) }),
      { at },
      { seed: SEED, coverage: 0.5 },
    );
    expect(record.interval.at).toHaveLength(2);
    expectClose(record.interval.far[1] - record.interval.far[0], 2 * 0.6745 * 1.84, 0.1);
  });

  it.each([
    ["a seed between the whole numbers", { seed: 0.5 }, "seed is 0.5; needs a whole number"],
    ["a seed too large", { seed: 2 ** 31 }, "seed is 2147483648"],
    ["few draws", { seed: 1, draws: 99 }, "draws is 99; needs a whole number of at least 100"],
    ["all coverage", { seed: 1, coverage: 1 }, "coverage is 1; needs more than 0 and less than 1"],
    [
      "correlated rectangles",
      {
        seed: 1,
        distributions: { x: "rectangular" as const },
        correlations: [{ between: ["x", "y"] as const, coefficient: 0.5 }],
      },
      'distributions is "rectangular"; needs normal inputs',
    ],
  ])("refuses %s", (_, options, message) => {
    const inputs = { x: measured(0, 1), y: measured(0, 1) };
    expect(refusal(() => propagateByMonteCarlo(({ x }) => x, inputs, options)).message).toContain(
      message,
    );
  });

  it("refuses a result that hardly any draw has", () => {
    const only = (): unknown =>
      propagateByMonteCarlo(
        ({ x }) => ({ x: x === 0 ? 1 : undefined }),
        { x: measured(0, 1) },
        { seed: 1 },
      );
    expect(refusal(only).code).toBe("no-solution");
  });
});
