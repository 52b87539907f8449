import { fc, test } from "@fast-check/vitest";
import {
  bestMirrorLine,
  distance,
  distanceFromLine,
  type Line,
  lineAlong,
  type MirrorPair,
  reflectAcross,
  type Similarity,
  transform,
} from "brow-geometry/geometry";
import { flatPoint, length } from "brow-geometry/units";
import { px } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyAngle, anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

/** Pairs and points of the axis of a face, each up to 5 px from symmetric. */
const anyPairs: fc.Arbitrary<readonly MirrorPair<"px">[]> = fc
  .array(fc.tuple(anyFlatPoint<"px">(5), anyFlatPoint<"px">(5)), { minLength: 11, maxLength: 11 })
  .map((shifts) =>
    FACE.map(({ pair, middle, weight }, index) => {
      const [first = px([0, 0]), second = px([0, 0])] = shifts[index] ?? [];
      if (pair === undefined) {
        return { one: px([middle[0] + first[0], middle[1] + first[1]]), weight, spread: px(2) };
      }
      const one = px([first[0] - pair[0], pair[1] + first[1]]);
      const other = px([second[0] + pair[0], pair[1] + second[1]]);
      return { one, other, weight, spread: px(2) };
    }),
  );

const FACE: readonly (
  | {
      readonly pair: readonly [number, number];
      readonly middle?: undefined;
      readonly weight: number;
    }
  | {
      readonly pair?: undefined;
      readonly middle: readonly [number, number];
      readonly weight: number;
    }
)[] = [
  { pair: [16, 0], weight: 1 },
  { pair: [44, 0], weight: 1 },
  { pair: [31.5, 0], weight: 1 },
  { pair: [25, 66], weight: 1 },
  { pair: [15.7, 38], weight: 0.25 },
  { middle: [0, -16], weight: 1 },
  { middle: [0, -2], weight: 1 },
  { middle: [0, 58], weight: 1 },
  { middle: [0, 66], weight: 1 },
  { middle: [0, 34], weight: 0.25 },
  { middle: [0, 44], weight: 0.25 },
];

const anySimilarity: fc.Arbitrary<Similarity<"px", "mm">> = fc.record({
  rotation: anyAngle(),
  factor: fc.double({ min: 0.05, max: 5, noNaN: true }),
  from: anyFlatPoint<"px">(1000),
  to: anyFlatPoint<"mm">(1000),
});

describe("bestMirrorLine", () => {
  // Synthetic deviated nose; references by SciPy, NumPy and R: the true line passes x = 500 at
  // y = 600, total least squares gives 504.3496, a Tukey bisquare 500.0314.
  const nose = (spreadOfEach: number): readonly MirrorPair<"px">[] =>
    [
      [489.4, 380],
      [491.2, 430],
      [492.95, 455],
      [495.5, 520],
      [502.3, 640],
      [505.1, 700],
      [507.8, 760],
      [511.2, 820],
      [518.5, 610],
      [527.5, 650],
    ].map(([x = 0, y = 0]) => ({ one: px([x, y]), weight: 1, spread: px(spreadOfEach) }));

  it.each([
    [0.5, 500.0304],
    [1, 500.0268],
    [3, 500.0258],
  ])("keeps to the face beside a deviated nose, spread %s px", (spreadOfEach, expected) => {
    const { line } = bestMirrorLine(nose(spreadOfEach));
    const at600 =
      line.through[0] + ((600 - line.through[1]) * line.direction[0]) / line.direction[1];
    expectClose(at600, expected, 2e-4);
    expectClose(at600, 500, 0.1);
  });

  it("gives no weight to the two that deviate", () => {
    expect(bestMirrorLine(nose(1)).weights.slice(8)).toEqual([0, 0]);
  });

  it("follows the deviated nose when told not to be robust", () => {
    const { line, robust } = bestMirrorLine(nose(1), { robust: false });
    const at600 =
      line.through[0] + ((600 - line.through[1]) * line.direction[0]) / line.direction[1];
    expectClose(at600, 504.3496, 1e-4);
    expect(robust).toBe(false);
  });

  test.prop([anyPairs, fc.constantFrom(true, false), anySimilarity])(
    "turns, shifts and grows with its points",
    (pairs, robust, similarity) => {
      const fit = bestMirrorLine(pairs, { robust });
      const moved = pairs.map(({ one, other, weight, spread }): MirrorPair<"mm"> => {
        const pair = {
          one: transform(one, similarity),
          weight,
          spread: length<"mm">(spread * similarity.factor),
        };
        return other === undefined ? pair : { ...pair, other: transform(other, similarity) };
      });
      const there = bestMirrorLine(moved, { robust });
      const through = transform(fit.line.through, similarity);
      expectClose(distanceFromLine(through, there.line), 0, 1e-6 * similarity.factor);
      expectClose(angleBetween(there.line, fit.line, similarity.rotation), 0, 1e-6);
      expectClose(there.weights, fit.weights, 1e-6);
      expectClose(there.angleU, fit.angleU, 1e-6 * fit.angleU);
      expectClose(there.throughU / similarity.factor, fit.throughU, 1e-6 * fit.throughU);
    },
  );

  test.prop([anyPairs])("leaves no more than a numeric search of all lines finds", (pairs) => {
    const { line: best } = bestMirrorLine(pairs, { robust: false });
    const leftAt = (angle: number, x: number, y: number): number =>
      squaresLeft(
        pairs,
        lineAlong(flatPoint<"px">(best.through[0] + x, best.through[1] + y), [
          Math.cos((angle * Math.PI) / 180),
          Math.sin((angle * Math.PI) / 180),
        ]),
      );
    const grid = (from: number, to: number, step: number): readonly number[] =>
      Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
    const leastOf = (angles: readonly number[]): number =>
      angles.reduce((least, angle) => (leftAt(angle, 0, 0) < leftAt(least, 0, 0) ? angle : least));
    const coarse = leastOf(grid(0, 180, 1));
    const fine = leastOf(grid(coarse - 1, coarse + 1, 0.01));
    const left = squaresLeft(pairs, best);
    expectClose(left, leftAt(fine, 0, 0), 0.01 + 1e-3 * left);
    for (const [x, y] of [
      [0, 0],
      [1, 0],
      [0, 1],
      [-3, 5],
    ] as const) {
      expect(left).toBeLessThanOrEqual(leftAt(fine, x, y) * (1 + 1e-9));
    }
  });

  it("knows how sure the line is: as sure as small moves of all points say", () => {
    const pairs: readonly MirrorPair<"px">[] = [
      { one: px([-16, 0]), other: px([16, 1]), weight: 1, spread: px(0.5) },
      { one: px([-44, 1]), other: px([43, 0]), weight: 1, spread: px(1) },
      { one: px([-25, -66]), other: px([25, -65]), weight: 0.5, spread: px(1) },
      { one: px([0.5, -40]), weight: 1, spread: px(2) },
    ];
    const fit = bestMirrorLine(pairs, { robust: false });
    const step = 1e-4;
    let [turning, shifting] = [0, 0];
    pairs.forEach((pair, index) => {
      for (const end of pair.other === undefined
        ? (["one"] as const)
        : (["one", "other"] as const)) {
        for (const [x, y] of [
          [step, 0],
          [0, step],
        ] as const) {
          const at = pair[end] ?? pair.one;
          const moved = { ...pair, [end]: px([at[0] + x, at[1] + y]) };
          const there = bestMirrorLine(
            pairs.map((same, place) => (place === index ? moved : same)),
            { robust: false },
          );
          turning += ((angleBetween(there.line, fit.line, 0) / step) * pair.spread) ** 2;
          shifting += ((distanceFromLine(there.line.through, fit.line) / step) * pair.spread) ** 2;
        }
      }
    });
    expectClose(fit.angleU, Math.sqrt(turning), 1e-3 * fit.angleU);
    expectClose(fit.throughU, Math.sqrt(shifting), 1e-3 * fit.throughU);
  });

  it("lets a pair count by its mismatch in its own spreads: with a partner it is that of two points", () => {
    const symmetric: readonly MirrorPair<"px">[] = FACE.map(({ pair, middle, weight }) =>
      pair === undefined
        ? { one: px(middle), weight, spread: px(2) }
        : { one: px([-pair[0], pair[1]]), other: px(pair), weight, spread: px(2) },
    );
    // Of next to no weight, so that they do not move the line themselves.
    const strays: readonly MirrorPair<"px">[] = [
      { one: px([-20, 10]), other: px([20, 13]), weight: 1e-9, spread: px(2) },
      { one: px([3, 20]), weight: 1e-9, spread: px(2) },
    ];
    const { weights } = bestMirrorLine([...symmetric, ...strays]);
    const limit = 4.685 * 2;
    expectClose((weights[11] ?? 0) / 1e-9, (1 - (3 / Math.SQRT2 / limit) ** 2) ** 2, 1e-6);
    expectClose((weights[12] ?? 0) / 1e-9, (1 - (3 / limit) ** 2) ** 2, 1e-6);
  });

  it.each<[string, readonly MirrorPair<"px">[], string]>([
    ["no points", [], "ill-conditioned"],
    ["one point", [{ one: px([1, 2]), weight: 1, spread: px(1) }], "ill-conditioned"],
    ["a spread of 0", [{ one: px([1, 2]), weight: 1, spread: px(0) }], "out-of-range"],
    ["a weight of 0", [{ one: px([1, 2]), weight: 0, spread: px(1) }], "out-of-range"],
    [
      "no number",
      [{ one: px([1, 2]), other: px([Number.NaN, 2]), weight: 1, spread: px(1) }],
      "not-finite",
    ],
  ])("refuses %s", (_, pairs, code) => {
    expect(refusal(() => bestMirrorLine(pairs)).code).toBe(code);
  });

  it("refuses points that mirror each other nowhere", () => {
    const pairs = Array.from({ length: 9 }, (_, index) => ({
      one: px([97 * Math.sin(7 * index), 89 * Math.cos(11 * index)]),
      other: px([91 * Math.cos(5 * index + 1), 79 * Math.sin(3 * index + 2)]),
      weight: 1,
      spread: px(0.01),
    }));
    expect(refusal(() => bestMirrorLine(pairs)).code).toBe("inconsistent");
  });
});

/** Degrees between two lines after the second is turned, without regard to direction. */
function angleBetween(
  one: Pick<Line<"mm">, "direction">,
  other: Pick<Line<"mm">, "direction">,
  turn: number,
): number {
  const angle = ({ direction: [x, y] }: Pick<Line<"mm">, "direction">): number =>
    (Math.atan2(y, x) * 180) / Math.PI;
  return ((((angle(one) - angle(other) - turn) % 180) + 270) % 180) - 90;
}

/** What a line leaves: squares of each point against the mirror image of its partner. */
function squaresLeft(pairs: readonly MirrorPair<"px">[], line: Line<"px">): number {
  return pairs.reduce((sum, { one, other, weight }) => {
    const square = distance(one, reflectAcross(other ?? one, line)) ** 2;
    return sum + (other === undefined ? 1 : 2) * weight * square;
  }, 0);
}
