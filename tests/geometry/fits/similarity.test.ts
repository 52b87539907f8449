import { fc, test } from "@fast-check/vitest";
import { fitSimilarity, type Similarity, transform } from "brow-geometry/geometry";
import { flatPoint } from "brow-geometry/units";
import { type FlatPoint, mm, px } from "brow-geometry";
import { Matrix, SVD } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { anyAngle, anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const anyTurn: fc.Arbitrary<Similarity<"px", "mm">> = fc.record({
  rotation: anyAngle(),
  factor: fc.double({ min: 0.05, max: 5, noNaN: true }),
  from: anyFlatPoint<"px">(),
  to: anyFlatPoint<"mm">(),
});

/** Three to ten points, not all in one place. */
const anyFigure = fc
  .array(anyFlatPoint<"px">(), { minLength: 3, maxLength: 10 })
  .filter((points) =>
    points.some(([x, y]) => Math.hypot(x - (points[0]?.[0] ?? 0), y - (points[0]?.[1] ?? 0)) > 1),
  );

/** Umeyama's solution by singular value decomposition, through the npm package ml-matrix. */
function bySvd(
  points: readonly FlatPoint<"px">[],
  partners: readonly FlatPoint<"mm">[],
): {
  readonly rotation: number;
  readonly factor: number;
} {
  const mean = (list: readonly (readonly [number, number])[], axis: 0 | 1): number =>
    list.reduce((sum, point) => sum + point[axis], 0) / list.length;
  const centred = (list: readonly (readonly [number, number])[]): Matrix =>
    new Matrix(list.map(([x, y]) => [x - mean(list, 0), y - mean(list, 1)]));
  const from = centred(points);
  const svd = new SVD(centred(partners).transpose().mmul(from));
  const u = svd.leftSingularVectors;
  const v = svd.rightSingularVectors;
  const det = (matrix: Matrix): number =>
    matrix.get(0, 0) * matrix.get(1, 1) - matrix.get(0, 1) * matrix.get(1, 0);
  const sign = Math.sign(det(u) * det(v));
  const turn = u.mmul(Matrix.diag([1, sign])).mmul(v.transpose());
  const [first = 0, second = 0] = svd.diagonal;
  return {
    rotation: (Math.atan2(turn.get(1, 0), turn.get(0, 0)) * 180) / Math.PI,
    factor: (first + sign * second) / from.clone().pow(2).sum(),
  };
}

describe("fitSimilarity", () => {
  // Umeyama 1991 (IEEE PAMI 13:376–380): as complex numbers w = 0.6 − 0.4i, t = −0.8 + 0.4i.
  it("answers Umeyama's example, which only a reflection fits", () => {
    const { similarity, squares } = fitSimilarity(
      mm([
        [0, 0],
        [1, 0],
        [0, 2],
      ]),
      mm([
        [0, 0],
        [-1, 0],
        [0, 2],
      ]),
    );
    expectClose(similarity.rotation, -33.69006752598, 1e-11);
    expectClose(similarity.factor, 0.7211102550928, 1e-13);
    expectClose(squares, 1.6, 1e-14);
    expectClose(transform(mm([0, 0]), similarity), [-0.8, 0.4], 1e-14);
    expectClose(transform(mm([1, 0]), similarity), [-0.8 + 0.6, 0.4 - 0.4], 1e-14);
  });

  test.prop([anyFigure, anyTurn])("finds the similarity that made the partners", (points, turn) => {
    const partners = points.map((point) => transform(point, turn));
    const { similarity, residuals } = fitSimilarity(points, partners);
    expectClose(similarity.factor, turn.factor, 1e-7);
    expectClose(
      residuals,
      points.map(() => 0),
      1e-6,
    );
    expectClose(
      points.map((point) => transform(point, similarity)),
      partners,
      1e-6,
    );
  });

  test.prop([anyFigure, fc.array(anyFlatPoint<"mm">(100), { minLength: 10, maxLength: 10 })])(
    "agrees with Umeyama's way by singular values",
    (points, shifts) => {
      const partners = points.map(([x, y], index) => {
        const [byX, byY] = shifts[index] ?? [0, 0];
        return flatPoint<"mm">(x + byX, byY - y);
      });
      const { similarity } = fitSimilarity(points, partners);
      const expected = bySvd(points, partners);
      fc.pre(expected.factor > 1e-3);
      expectClose(similarity.factor, expected.factor, 1e-9);
      const turn = (similarity.rotation - expected.rotation + 540) % 360;
      expectClose(turn, 180, 1e-6);
    },
  );

  test.prop([anyFigure, anyTurn])("keeps a factor that is known", (points, turn) => {
    const partners = points.map((point) => transform(point, turn));
    const { similarity } = fitSimilarity(points, partners, { factor: 2 });
    expect(similarity.factor).toBe(2);
    expectClose(Math.cos(((similarity.rotation - turn.rotation) * Math.PI) / 180), 1, 1e-9);
  });

  it("leaves out points of weight 0", () => {
    const points = px([
      [0, 0],
      [10, 0],
      [0, 10],
      [3, 3],
    ]);
    const partners = mm([
      [0, 0],
      [20, 0],
      [0, 20],
      [900, 900],
    ]);
    const { similarity, squares, residuals } = fitSimilarity(points, partners, {
      weights: [1, 1, 1, 0],
    });
    expectClose(similarity.factor, 2, 1e-12);
    expectClose(squares, 0, 1e-20);
    expectClose(residuals[3], Math.hypot(894, 894), 1e-9);
  });

  it("stretches depth with the rest", () => {
    const similarity = { rotation: 0, factor: 0.5, from: px([0, 0]), to: mm([1, 1]) };
    expectClose(transform(px([2, 4, 6]), similarity), [2, 3, 3], 1e-12);
  });

  it.each([
    ["one point", px([[0, 0]]), mm([[0, 0]]), {}, "wrong-count"],
    [
      "partners that are too few",
      px([
        [0, 0],
        [1, 1],
      ]),
      mm([[0, 0]]),
      {},
      "wrong-count",
    ],
    [
      "weights that are too few",
      px([
        [0, 0],
        [1, 1],
      ]),
      mm([
        [0, 0],
        [1, 1],
      ]),
      { weights: [1] },
      "wrong-count",
    ],
    [
      "points in one place",
      px([
        [2, 2],
        [2, 2],
      ]),
      mm([
        [0, 0],
        [1, 1],
      ]),
      {},
      "coincident-points",
    ],
    [
      "partners in one place",
      px([
        [0, 0],
        [1, 1],
      ]),
      mm([
        [2, 2],
        [2, 2],
      ]),
      {},
      "ill-conditioned",
    ],
    [
      "a negative weight",
      px([
        [0, 0],
        [1, 1],
      ]),
      mm([
        [0, 0],
        [1, 1],
      ]),
      { weights: [1, -1] },
      "out-of-range",
    ],
    [
      "a factor of 0",
      px([
        [0, 0],
        [1, 1],
      ]),
      mm([
        [0, 0],
        [1, 1],
      ]),
      { factor: 0 },
      "out-of-range",
    ],
    [
      "a coordinate that is no number",
      px([
        [0, 0],
        [1, Number.NaN],
      ]),
      mm([
        [0, 0],
        [1, 1],
      ]),
      {},
      "not-finite",
    ],
  ])("refuses %s", (_, points, partners, options, code) => {
    expect(refusal(() => fitSimilarity(points, partners, options)).code).toBe(code);
  });
});
