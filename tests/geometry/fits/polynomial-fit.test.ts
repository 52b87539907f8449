import { fc, test } from "@fast-check/vitest";
import { fitPolynomial, polynomialAt, polynomialWeights } from "../../../src/geometry/internal.js";
import { Matrix, pseudoInverse } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

/** Five to twelve nodes that lie apart, with values. */
const anyNodes = fc
  .array(fc.tuple(anyBetween(0.2, 9), anyBetween(-9, 9)), {
    minLength: 5,
    maxLength: 12,
  })
  .map((pairs) => {
    let node = -20;
    return pairs.map(([step, value]) => ({ node: (node += step), value }));
  });

describe("fitPolynomial", () => {
  it("gives Pearson's points the line that regression gives", () => {
    // Pearson 1901, the published table; regression of y on x in closed form.
    const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
    const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
    const sum = (values: readonly number[]): number =>
      values.reduce((one, other) => one + other, 0);
    const slope =
      (10 * sum(x.map((value, index) => value * (y[index] ?? 0))) - sum(x) * sum(y)) /
      (10 * sum(x.map((value) => value * value)) - sum(x) ** 2);
    const fit = fitPolynomial(x, y, 1);
    expectClose(polynomialAt(fit, 3, 1), slope, 1e-12);
    expectClose(polynomialAt(fit, sum(x) / 10), sum(y) / 10, 1e-12);
  });

  test.prop([anyNodes, fc.integer({ min: 0, max: 4 })])(
    "agrees with the pseudo-inverse of ml-matrix",
    (points, degree) => {
      const design = new Matrix(
        points.map(({ node }) =>
          Array.from({ length: degree + 1 }, (_, power) => (node / 20) ** power),
        ),
      );
      const weights = pseudoInverse(design);
      const coefficients = weights.mmul(Matrix.columnVector(points.map(({ value }) => value)));
      const fit = fitPolynomial(
        points.map(({ node }) => node),
        points.map(({ value }) => value),
        degree,
      );
      for (const { node } of points) {
        const row = Matrix.rowVector(
          Array.from({ length: degree + 1 }, (_, power) => (node / 20) ** power),
        );
        expectClose(polynomialAt(fit, node), row.mmul(coefficients).get(0, 0), 1e-6);
        expectClose(polynomialWeights(fit, node), row.mmul(weights).to1DArray(), 1e-6);
      }
    },
  );

  test.prop([anyNodes, fc.array(anyBetween(-3, 3), { minLength: 5, maxLength: 5 })])(
    "goes through the values of a polynomial of its degree, with its slopes",
    (points, powers) => {
      const value = (x: number): number =>
        powers.reduceRight((sum, power) => sum * (x / 20) + power, 0);
      const slope = (x: number): number =>
        powers.reduceRight(
          (sum, power, order) => (order === 0 ? sum : sum * (x / 20) + order * power),
          0,
        ) / 20;
      const nodes = points.map(({ node }) => node);
      const fit = fitPolynomial(nodes, nodes.map(value), 4);
      for (const node of nodes) {
        expectClose(polynomialAt(fit, node), value(node), 1e-8);
        expectClose(polynomialAt(fit, node, 1), slope(node), 1e-7);
      }
      expect(fit.scatter ?? 0).toBeLessThan(1e-8);
    },
  );

  it("tells slope and second derivative", () => {
    const cube = fitPolynomial([-2, -1, 0, 1, 2], [-8, -1, 0, 1, 8], 3);
    expectClose(
      [0, 1, 2].map((order) => polynomialAt(cube, 3, order as 0 | 1 | 2)),
      [27, 27, 18],
      1e-9,
    );
  });

  test.prop([anyNodes, fc.integer({ min: 0, max: 3 }), fc.constantFrom(0, 1, 2)])(
    "weighs each value by what it changes",
    (points, degree, derivative) => {
      const order = derivative;
      const nodes = points.map(({ node }) => node);
      const values = points.map(({ value }) => value);
      const at = ((nodes[0] ?? 0) + (nodes[1] ?? 0)) / 2;
      const weights = polynomialWeights(fitPolynomial(nodes, values, degree), at, order);
      nodes.forEach((_, moved) => {
        const other = fitPolynomial(
          nodes,
          values.map((value, index) => (index === moved ? value + 1 : value)),
          degree,
        );
        const change =
          polynomialAt(other, at, order) -
          polynomialAt(fitPolynomial(nodes, values, degree), at, order);
        expectClose(weights[moved], change, 1e-6);
      });
    },
  );

  it("tells the scatter about the curve, where points are left over for it", () => {
    // Residuals of 1, 2, 4 about their mean: −4/3, −1/3, 5/3; √(42/9 / 2).
    expectClose(fitPolynomial([0, 1, 2], [1, 2, 4], 0).scatter, Math.sqrt(42 / 18), 1e-12);
    expect(fitPolynomial([0, 1, 2], [1, 2, 4], 2)).not.toHaveProperty("scatter");
  });

  it.each([
    ["a degree that is no whole number", [0, 1], [0, 1], 0.5, "out-of-range", "degree"],
    ["lists of different length", [0, 1], [0], 1, "wrong-count", "values"],
    ["fewer nodes than powers", [0, 1], [0, 1], 2, "wrong-count", "nodes"],
    ["nodes that fall together", [0, 1, 1], [0, 1, 2], 2, "coincident-points", "nodes"],
    ["a node that is no number", [0, Number.NaN], [0, 1], 1, "not-finite", "nodes"],
    ["a value without bounds", [0, 1], [0, Number.POSITIVE_INFINITY], 1, "not-finite", "values"],
  ])("refuses %s", (_, nodes, values, degree, code, field) => {
    const error = refusal(() => fitPolynomial(nodes, values, degree));
    expect(error.code).toBe(code);
    expect(error.detail.field).toBe(field);
  });
});
