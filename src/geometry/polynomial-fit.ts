import { GeometryError, requireFinite } from "../units/index.js";

/**
 * A least-squares polynomial, written in polynomials that are orthogonal over its own nodes, so that
 * the terms do not disturb each other and no system of equations has to be solved.
 */
export interface PolynomialFit {
  readonly nodes: readonly number[];
  /** One for each power from 0 to the degree. */
  readonly coefficients: readonly number[];
  /** The recurrence φₖ₊₁(t) = (t − shiftₖ) φₖ(t) − ratioₖ φₖ₋₁(t), and Σ φₖ² over the nodes. */
  readonly basis: readonly {
    readonly shift: number;
    readonly ratio: number;
    readonly square: number;
  }[];
  /**
   * Standard deviation of the values about the curve, √(Σ residual² / (nodes − coefficients));
   * absent where there are no more nodes than coefficients.
   */
  readonly scatter?: number;
}

/**
 * The polynomial of a degree that runs closest to values at given nodes: least squares.
 *
 * @throws GeometryError `wrong-count` where the lists differ in length or have fewer than
 * degree + 1 entries, `not-finite`, `coincident-points` where no more nodes than the degree differ
 *
 * @example
 * ```ts
 * import { fitPolynomial, polynomialAt } from "brow-geometry/geometry";
 * const parabola = fitPolynomial([0, 1, 2, 3], [1, 2, 5, 10], 2);
 * polynomialAt(parabola, 1.5); // → 3.2500
 * ```
 */
export function fitPolynomial(
  nodes: readonly number[],
  values: readonly number[],
  degree: number,
): PolynomialFit {
  requireValues(nodes, values, degree);
  const basis: PolynomialFit["basis"][number][] = [];
  const coefficients: number[] = [];
  const residuals = values.slice();
  let before = nodes.map(() => 0);
  let current = nodes.map(() => 1);
  let squareBefore = 1;
  for (let power = 0; power <= degree; power += 1) {
    const square = sumOf(current, (phi) => phi * phi);
    const shift = sumOf(current, (phi, index) => (nodes[index] as number) * phi * phi) / square;
    const ratio = power === 0 ? 0 : square / squareBefore;
    const coefficient = sumOf(current, (phi, index) => (residuals[index] as number) * phi) / square;
    current.forEach((phi, index) => {
      residuals[index] = (residuals[index] as number) - coefficient * phi;
    });
    basis.push({ shift, ratio, square });
    coefficients.push(coefficient);
    const next = current.map(
      (phi, index) => ((nodes[index] as number) - shift) * phi - ratio * (before[index] as number),
    );
    [before, current, squareBefore] = [current, next, square];
  }
  const free = nodes.length - coefficients.length;
  if (free === 0) return { nodes, coefficients, basis };
  const scatter = Math.sqrt(sumOf(residuals, (residual) => residual * residual) / free);
  return { nodes, coefficients, basis, scatter };
}

/** Which derivative is asked for: the value, the slope, the curvature. */
export type Derivative = 0 | 1 | 2;

/**
 * Value, slope or second derivative of a fitted polynomial.
 *
 * @example
 * ```ts
 * import { fitPolynomial, polynomialAt } from "brow-geometry/geometry";
 * const parabola = fitPolynomial([0, 1, 2, 3], [1, 2, 5, 10], 2);
 * polynomialAt(parabola, 1.5, 1); // → 3.0000
 * polynomialAt(parabola, 1.5, 2); // → 2.0000
 * ```
 */
export function polynomialAt(fit: PolynomialFit, at: number, derivative: Derivative = 0): number {
  let sum = 0;
  for (const [power, phi] of basisAt(fit, at, derivative).entries()) {
    sum += (fit.coefficients[power] as number) * phi;
  }
  return sum;
}

/**
 * How much each of the fitted values weighs in the curve's value (or derivative) at a place:
 * ∂p(at)/∂valueᵢ. Values with independent errors of standard uncertainty u give the curve there
 * the standard uncertainty u·√(Σ weight²).
 *
 * @example
 * ```ts
 * import { fitPolynomial, polynomialWeights } from "brow-geometry/geometry";
 * const mean = fitPolynomial([0, 1, 2, 3], [7, 9, 8, 8], 0);
 * polynomialWeights(mean, 5); // → [0.25, 0.25, 0.25, 0.25]
 * ```
 */
export function polynomialWeights(
  fit: PolynomialFit,
  at: number,
  derivative: Derivative = 0,
): readonly number[] {
  const here = basisAt(fit, at, derivative);
  const shares = here.map((phi, power) => phi / (fit.basis[power]?.square as number));
  return fit.nodes.map((node) => {
    let sum = 0;
    for (const [power, phi] of basisAt(fit, node, 0).entries())
      sum += (shares[power] as number) * phi;
    return sum;
  });
}

/** The orthogonal polynomials, or their derivatives, at a place. */
function basisAt(fit: PolynomialFit, at: number, derivative: Derivative): readonly number[] {
  const values: number[] = [];
  let [value, slope, curvature] = [1, 0, 0];
  let [valueBefore, slopeBefore, curvatureBefore] = [0, 0, 0];
  for (const { shift, ratio } of fit.basis) {
    values.push(derivative === 0 ? value : derivative === 1 ? slope : curvature);
    const from = at - shift;
    const nextCurvature = from * curvature + 2 * slope - ratio * curvatureBefore;
    const nextSlope = from * slope + value - ratio * slopeBefore;
    const nextValue = from * value - ratio * valueBefore;
    [valueBefore, slopeBefore, curvatureBefore] = [value, slope, curvature];
    [value, slope, curvature] = [nextValue, nextSlope, nextCurvature];
  }
  return values;
}

function sumOf(terms: readonly number[], of: (term: number, index: number) => number): number {
  let sum = 0;
  for (let index = 0; index < terms.length; index += 1) sum += of(terms[index] as number, index);
  return sum;
}

function requireValues(nodes: readonly number[], values: readonly number[], degree: number): void {
  const where = "fitPolynomial";
  if (!Number.isInteger(degree) || degree < 0) {
    const need = "a whole number, 0 or more";
    throw new GeometryError("out-of-range", { where, field: "degree", value: degree, need });
  }
  if (values.length !== nodes.length) {
    const need = `${nodes.length} numbers, one for each node`;
    throw new GeometryError("wrong-count", { where, field: "values", value: values, need });
  }
  if (nodes.length <= degree) {
    const need = `at least ${degree + 1} numbers for degree ${degree}`;
    throw new GeometryError("wrong-count", { where, field: "nodes", value: nodes, need });
  }
  nodes.forEach((node, index) => requireFinite(where, `nodes[${index}]`, node));
  values.forEach((value, index) => requireFinite(where, `values[${index}]`, value));
  if (new Set(nodes).size <= degree) {
    const need = `at least ${degree + 1} different numbers for degree ${degree}`;
    throw new GeometryError("coincident-points", { where, field: "nodes", value: nodes, need });
  }
}
