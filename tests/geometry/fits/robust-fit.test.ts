import { fitRobustly } from "brow-geometry/geometry";
import { robustFit } from "../../../src/geometry/internal.js";
import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const places = [-3, -2, -1, -0.5, 0, 0.5, 1, 2, 3];
const parabola = places.map((x) => [1, x, x * x]);
const valueAt = (x: number): number => 2 - 0.5 * x + 0.25 * x * x;

describe("a robust fit", () => {
  it("returns exact data exactly", () => {
    const { coefficients, residuals } = fitRobustly(parabola, places.map(valueAt), 1);
    expectClose(coefficients, [2, -0.5, 0.25], 1e-12);
    expectClose(
      residuals,
      places.map(() => 0),
      1e-12,
    );
  });

  it("does not feel one bad value, wherever it stands and however bad it is", () => {
    fc.assert(
      fc.property(
        fc.nat(places.length - 1),
        fc.double({ min: 5, max: 1e6, noNaN: true }),
        fc.boolean(),
        (worst, size, up) => {
          const values = places.map(valueAt);
          values[worst] = (values[worst] ?? 0) + (up ? size : -size);
          const { coefficients, weights } = fitRobustly(parabola, values, 0.5);
          expectClose(coefficients, [2, -0.5, 0.25], 1e-6);
          expect(weights[worst]).toBe(0);
        },
      ),
    );
  });

  // ml-matrix solves the same least squares by QR; with a spread that every value lies far within,
  // the bisquare's weights are all but 1.
  it("is least squares where nothing is bad", () => {
    fc.assert(
      fc.property(fc.array(anyNumber(1), { minLength: 9, maxLength: 9 }), (errors) => {
        const values = places.map((x, index) => valueAt(x) + (errors[index] ?? 0));
        const exact = solve(new Matrix(parabola), Matrix.columnVector(values)).to1DArray();
        expectClose(fitRobustly(parabola, values, 1e6).coefficients, exact, 1e-8);
      }),
    );
  });

  it("solves its own weighted normal equations", () => {
    fc.assert(
      fc.property(fc.array(anyNumber(3), { minLength: 9, maxLength: 9 }), (errors) => {
        const values = places.map((x, index) => valueAt(x) + (errors[index] ?? 0));
        const { coefficients, residuals, weights } = fitRobustly(parabola, values, 0.5);
        residuals.forEach((residual, row) => {
          const fitted = (parabola[row] ?? []).reduce(
            (sum, term, column) => sum + term * (coefficients[column] ?? 0),
            0,
          );
          expect(residual).toBeCloseTo((values[row] ?? 0) - fitted, 8);
        });
        for (const column of [0, 1, 2]) {
          const pull = residuals.reduce(
            (sum, residual, row) =>
              sum + residual * (weights[row] ?? 0) * (parabola[row]?.[column] ?? 0),
            0,
          );
          expect(pull).toBeCloseTo(0, 6);
        }
      }),
    );
  });

  it("shifts and scales with its values", () => {
    const values = places.map((x, index) => valueAt(x) + Math.sin(7 * index));
    const { coefficients } = fitRobustly(parabola, values, 0.4);
    const moved = fitRobustly(
      parabola,
      values.map((value) => 3 * value + 5),
      1.2,
    );
    expectClose(
      moved.coefficients,
      coefficients.map((c, term) => 3 * c + (term === 0 ? 5 : 0)),
      1e-9,
    );
  });

  it("is plain least squares with no value to spare", () => {
    const terms = [
      [1, 0],
      [1, 1],
      [1, 2],
    ];
    expectClose(
      fitRobustly(terms, [0, 1, 8], 0.1),
      { coefficients: [-1, 4], residuals: [1, -2, 1], weights: [1, 1, 1] },
      1e-12,
    );
  });

  it("started from a fit nearby ends where a fit from the start does, also where a value is left out", () => {
    const columns = [0, 1, 2].map(
      (term) => new Float64Array(parabola.map((row) => row[term] ?? 0)),
    );
    fc.assert(
      fc.property(
        fc.array(anyNumber(0.3), { minLength: 9, maxLength: 9 }),
        fc.nat(places.length - 1),
        fc.double({ min: -9, max: 9, noNaN: true }),
        (errors, moved, by) => {
          const values = places.map((x, index) => valueAt(x) + (errors[index] ?? 0));
          const near = robustFit(columns, values, 0.5);
          values[moved] = (values[moved] ?? 0) + by;
          const anew = robustFit(columns, values, 0.5).coefficients;
          const followed = robustFit(columns, values, 0.5, near);
          // Where a value lies far off there may be rivals: each solves its own equations.
          const pulls = columns.map((column) =>
            followed.residuals.reduce(
              (sum, residual, row) =>
                sum + residual * (followed.weights[row] ?? 0) * (column[row] ?? 0),
              0,
            ),
          );
          expectClose(
            pulls,
            pulls.map(() => 0),
            1e-6,
          );
          if (Math.abs(by) < 0.5) expectClose(followed.coefficients, anew, 1e-6);
        },
      ),
    );
  });

  it.each([
    ["fewer values than terms", [[1, 2]], [1], "wrong-count"],
    ["no terms", [], [], "wrong-count"],
    ["rows of different lengths", [[1, 2], [1]], [1, 2], "wrong-count"],
    ["too few rows", [[1]], [1, 2], "wrong-count"],
    ["NaN among the values", [[1], [1]], [1, Number.NaN], "not-finite"],
    ["infinity among the terms", [[1], [Number.POSITIVE_INFINITY]], [1, 2], "not-finite"],
    [
      "terms that say the same",
      [
        [1, 2],
        [1, 2],
        [1, 2],
      ],
      [1, 2, 3],
      "ill-conditioned",
    ],
  ])("refuses %s", (_, terms, values, code) => {
    expect(refusal(() => fitRobustly(terms, values, 1)).code).toBe(code);
  });

  it("refuses a spread of 0", () => {
    expect(refusal(() => fitRobustly([[1], [1]], [1, 2], 0)).code).toBe("out-of-range");
  });
});
