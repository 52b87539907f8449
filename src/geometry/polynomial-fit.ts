import { GeometryError, requireFinite } from "../units/index.js";

/**
 * A least-squares polynomial Σ powersⱼ τʲ of τ = (t − centre) / spread, which runs from −1 to 1 over
 * its nodes, so that high powers stay well behaved.
 */
export interface PolynomialFit {
  readonly nodes: readonly number[];
  readonly centre: number;
  readonly spread: number;
  readonly powers: readonly number[];
  /** Covariance of the powers where each value has an independent error of variance 1. */
  readonly covariance: readonly (readonly number[])[];
  /**
   * Standard deviation of the values about the curve, √(Σ residual² / (nodes − powers)); absent
   * where there are no more nodes than powers.
   */
  readonly scatter?: number;
}

/**
 * The polynomial of a degree that runs closest to values at given nodes: least squares, by
 * polynomials that are orthogonal over the nodes.
 *
 * @throws GeometryError `wrong-count` where the lists differ in length or have fewer than
 * degree + 1 entries, `not-finite`, `coincident-points` where no more nodes than the degree differ
 *
 * @example
 * ```ts
 * import { fitPolynomial, polynomialAt } from "brow-geometry";
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
  const low = Math.min(...nodes);
  const high = Math.max(...nodes);
  const centre = (low + high) / 2;
  const spread = high > low ? (high - low) / 2 : 1;
  const scaled = nodes.map((node) => (node - centre) / spread);

  const size = degree + 1;
  const powers = zeros(size);
  const covariance = Array.from({ length: size }, () => zeros(size));
  const residuals = values.slice();
  // φ as its powers and as its values at the nodes; φₖ₊₁ = (τ − shift) φₖ − ratio φₖ₋₁.
  let phi = zeros(size);
  phi[0] = 1;
  let phiBefore = zeros(size);
  let here = nodes.map(() => 1);
  let hereBefore = zeros(nodes.length);
  let squareBefore = 1;
  for (let order = 0; order < size; order += 1) {
    let [square, moment, product] = [0, 0, 0];
    for (let index = 0; index < here.length; index += 1) {
      const value = here[index] as number;
      square += value * value;
      moment += (scaled[index] as number) * value * value;
      product += (residuals[index] as number) * value;
    }
    const coefficient = product / square;
    for (let row = 0; row <= order; row += 1) {
      const share = (phi[row] as number) / square;
      powers[row] = (powers[row] as number) + coefficient * (phi[row] as number);
      const line = covariance[row] as number[];
      for (let column = 0; column <= order; column += 1) {
        line[column] = (line[column] as number) + share * (phi[column] as number);
      }
    }
    for (let index = 0; index < here.length; index += 1) {
      residuals[index] = (residuals[index] as number) - coefficient * (here[index] as number);
    }
    const shift = moment / square;
    const ratio = order === 0 ? 0 : square / squareBefore;
    const [phiNow, hereNow, phiLast, hereLast] = [phi, here, phiBefore, hereBefore];
    phi = phiNow.map(
      (power, row) =>
        (row === 0 ? 0 : (phiNow[row - 1] as number)) -
        shift * power -
        ratio * (phiLast[row] as number),
    );
    here = hereNow.map(
      (value, index) =>
        ((scaled[index] as number) - shift) * value - ratio * (hereLast[index] as number),
    );
    [phiBefore, hereBefore, squareBefore] = [phiNow, hereNow, square];
  }
  const fit = { nodes, centre, spread, powers, covariance };
  const free = nodes.length - size;
  if (free === 0) return fit;
  const sum = residuals.reduce((total, residual) => total + residual * residual, 0);
  return { ...fit, scatter: Math.sqrt(sum / free) };
}

/** Which derivative is asked for: the value, the slope, the second derivative. */
export type Derivative = 0 | 1 | 2;

/**
 * Value, slope or second derivative of a fitted polynomial.
 *
 * @example
 * ```ts
 * import { fitPolynomial, polynomialAt } from "brow-geometry";
 * const parabola = fitPolynomial([0, 1, 2, 3], [1, 2, 5, 10], 2);
 * polynomialAt(parabola, 1.5, 1); // → 3.0000
 * polynomialAt(parabola, 1.5, 2); // → 2.0000
 * ```
 */
export function polynomialAt(fit: PolynomialFit, at: number, derivative: Derivative = 0): number {
  return derivativeAt(fit.powers, (at - fit.centre) / fit.spread, derivative, fit.spread);
}

/**
 * How much each of the fitted values weighs in the curve's value (or derivative) at a place:
 * ∂p(at)/∂valueᵢ. Values with independent errors of standard uncertainty u give the curve there
 * the standard uncertainty u·√(Σ weight²).
 *
 * @example
 * ```ts
 * import { fitPolynomial, polynomialWeights } from "brow-geometry";
 * const mean = fitPolynomial([0, 1, 2, 3], [7, 9, 8, 8], 0);
 * polynomialWeights(mean, 5); // → [0.25, 0.25, 0.25, 0.25]
 * ```
 */
export function polynomialWeights(
  fit: PolynomialFit,
  at: number,
  derivative: Derivative = 0,
): readonly number[] {
  const { nodes, centre, spread, covariance } = fit;
  const tau = (at - centre) / spread;
  // The covariance is symmetric: its rows are as good as its columns.
  const powers = covariance.map((row) => derivativeAt(row, tau, derivative, spread));
  return nodes.map((node) => derivativeAt(powers, (node - centre) / spread, 0, spread));
}

/** Horner's rule for Σ powersⱼ τʲ and its derivatives by t. */
function derivativeAt(
  powers: readonly number[],
  tau: number,
  derivative: Derivative,
  spread: number,
): number {
  let [value, slope, half] = [0, 0, 0];
  for (let order = powers.length - 1; order >= 0; order -= 1) {
    half = half * tau + slope;
    slope = slope * tau + value;
    value = value * tau + (powers[order] as number);
  }
  if (derivative === 0) return value;
  return derivative === 1 ? slope / spread : (2 * half) / (spread * spread);
}

function zeros(count: number): number[] {
  return new Array<number>(count).fill(0);
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
  for (const node of nodes) requireFinite(where, "nodes", node);
  for (const value of values) requireFinite(where, "values", value);
  if (new Set(nodes).size <= degree) {
    const need = `at least ${degree + 1} different numbers for degree ${degree}`;
    throw new GeometryError("coincident-points", { where, field: "nodes", value: nodes, need });
  }
}
