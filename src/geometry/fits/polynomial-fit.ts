import { refuse, requireFinite } from "../../units/internal.js";
import { addTo, dot, zeros } from "./least-squares.js";

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
 */
export function fitPolynomial(
  nodes: readonly number[],
  values: readonly number[],
  degree: number,
): PolynomialFit {
  requireValues(nodes, values, degree);
  const { centre, spread } = reachOf(nodes);
  const scaled = nodes.map((node) => (node - centre) / spread);
  const size = degree + 1;
  const powers = zeros(size);
  const covariance = powers.map(() => zeros(size));
  const residuals = values.slice();
  // φ by its powers and by its values at the nodes; the next is (τ − shift) φ − ratio · φ before.
  let phi = zeros(size);
  let phiBefore = zeros(size);
  let here = zeros(nodes.length).fill(1);
  let hereBefore = zeros(nodes.length);
  let squareBefore = 1;
  phi[0] = 1;
  for (let order = 0; order < size; order += 1) {
    const square = dot(here, here);
    const coefficient = dot(here, residuals) / square;
    for (let row = 0; row <= order; row += 1) {
      const power = phi[row] as number;
      powers[row] = (powers[row] as number) + coefficient * power;
      addTo(covariance[row] as number[], phi, power / square);
    }
    addTo(residuals, here, -coefficient);

    const risen = here.map((value, index) => value * (scaled[index] as number));
    const shift = dot(here, risen) / square;
    const ratio = order === 0 ? 0 : square / squareBefore;
    addTo(risen, here, -shift);
    addTo(risen, hereBefore, -ratio);
    const next = [0, ...phi.slice(0, -1)];
    addTo(next, phi, -shift);
    addTo(next, phiBefore, -ratio);
    [phiBefore, hereBefore, squareBefore] = [phi, here, square];
    [phi, here] = [next, risen];
  }
  const fit = { nodes, centre, spread, powers, covariance };
  const free = nodes.length - size;
  return free === 0 ? fit : { ...fit, scatter: Math.sqrt(dot(residuals, residuals) / free) };
}

export type Derivative = 0 | 1 | 2;

export function polynomialAt(fit: PolynomialFit, at: number, derivative: Derivative = 0): number {
  return derivativeAt(fit.powers, (at - fit.centre) / fit.spread, derivative, fit.spread);
}

/**
 * How much each of the fitted values weighs in the curve's value (or derivative) at a place:
 * ∂p(at)/∂valueᵢ. Values with independent errors of standard uncertainty u give the curve there
 * the standard uncertainty u·√(Σ weight²).
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

/** Middle and half-width of what the nodes cover. */
function reachOf(nodes: readonly number[]): { readonly centre: number; readonly spread: number } {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const node of nodes) {
    if (node < low) low = node;
    if (node > high) high = node;
  }
  return { centre: (low + high) / 2, spread: high > low ? (high - low) / 2 : 1 };
}

function requireValues(nodes: readonly number[], values: readonly number[], degree: number): void {
  if (!Number.isInteger(degree) || degree < 0) {
    refuse("out-of-range", "degree", degree, "a whole number, 0 or more");
  }
  if (values.length !== nodes.length) {
    refuse("wrong-count", "values", values, `${nodes.length} numbers, one for each node`);
  }
  if (nodes.length <= degree) {
    const need = `at least ${degree + 1} numbers for degree ${degree}`;
    refuse("wrong-count", "nodes", nodes, need);
  }
  for (const node of nodes) requireFinite("nodes", node);
  for (const value of values) requireFinite("values", value);
  if (new Set(nodes).size <= degree) {
    const need = `at least ${degree + 1} different numbers for degree ${degree}`;
    refuse("coincident-points", "nodes", nodes, need);
  }
}
