import { refuse, requireFinite, requirePositive } from "../../units/internal.js";
import { bisquare, BISQUARE_CUT } from "./bisquare.js";
import {
  addTo,
  type Basis,
  closestFactors,
  columnsOf,
  DEPENDENT,
  orthonormalBasis,
  solveTriangle,
} from "./least-squares.js";

/** A sum of terms that runs close to given values, and what was left over. */
export interface RobustFit {
  /** One factor for each term. */
  readonly coefficients: readonly number[];
  /** Value less fit, for each value. */
  readonly residuals: readonly number[];
  /** How much each value counted in the end: 1 wholly, 0 not at all. */
  readonly weights: readonly number[];
}

/** Standard deviation of normal errors over the median of their sizes. */
const SPREAD_OF_MEDIAN = 1.4826;
const MOST_STEPS = 50;
/** Weights that change by less are settled. */
const SETTLED = 1e-9;

/**
 * Fits values by a sum of terms so that a single bad value does no harm.
 *
 * The start is the exact least-squares fit without the one value whose absence helps most; from
 * there Tukey's bisquare steps with a fixed spread, the standard deviation expected of good values,
 * take in what agrees with it. Where fewer than two values are to spare, plain least squares.
 *
 * @param terms - one row for each value: what each coefficient is multiplied by
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`, `ill-conditioned` where the
 * values do not determine the coefficients
 *
 * @example
 * ```ts
 * import { fitRobustly } from "brow-geometry/geometry";
 * const terms = [0, 1, 2, 3, 4, 5].map((x) => [1, x]);
 * fitRobustly(terms, [1, 3, 5, 70, 9, 11], 0.5).coefficients; // → [1.0000, 2.0000]
 * ```
 */
export function fitRobustly(
  terms: readonly (readonly number[])[],
  values: readonly number[],
  spread: number,
): RobustFit {
  const size = terms[0]?.length ?? 0;
  requireRows(terms, values, size);
  requirePositive("fitRobustly", "spread", spread);
  return robustFit(terms, values, spread);
}

/** As {@link fitRobustly}, of as many finite numbers as its caller knows there are. */
export function robustFit(
  terms: readonly (readonly number[])[],
  values: readonly number[],
  spread: number,
): RobustFit {
  const size = terms[0]?.length ?? 0;
  const basis = orthonormalBasis(columnsOf(terms));
  if (basis === undefined) refuseTerms();
  let weights: readonly number[] = values.map(() => 1);
  let fit = fitWeighted(basis, values, weights);
  if (values.length >= size + 2) {
    const worst = mostHarmful(basis, fit.residuals);
    weights = values.map((_, row) => (row === worst ? 0 : 1));
    fit = fitWeighted(basis, values, weights);
    const reach = BISQUARE_CUT * Math.max(spread, spreadOf(fit.residuals));
    for (let step = 0, change = 1; step < MOST_STEPS && change > SETTLED; step += 1) {
      const next = fit.residuals.map((residual) => bisquare((residual / reach) ** 2));
      change = Math.max(...next.map((weight, row) => Math.abs(weight - at(weights, row))));
      weights = next;
      fit = fitWeighted(basis, values, weights);
    }
  }
  const coefficients = solveTriangle(basis.triangle, fit.factors);
  return { coefficients, residuals: fit.residuals, weights };
}

interface WeightedFit {
  /** One for each column of the basis. */
  readonly factors: readonly number[];
  readonly residuals: readonly number[];
}

/** Least squares in which each value counts by its weight. */
function fitWeighted(
  { columns }: Basis,
  values: readonly number[],
  weights: readonly number[],
): WeightedFit {
  const scales = weights.map(Math.sqrt);
  const scaled = (entries: readonly number[]): readonly number[] =>
    entries.map((entry, row) => entry * at(scales, row));
  const basis = orthonormalBasis(columns.map(scaled));
  // The columns had length 1: of one that has lost nearly all of it, nothing is left but rounding.
  if (basis?.triangle.every((row, term) => at(row, term) ** 2 > DEPENDENT) !== true) refuseTerms();
  const factors = closestFactors(basis, scaled(values));
  const residuals = values.slice();
  columns.forEach((column, term) => {
    addTo(residuals, column, -at(factors, term));
  });
  return { factors, residuals };
}

/** The value without which the sum of squares falls furthest, by residual² / (1 − leverage). */
function mostHarmful({ columns }: Basis, residuals: readonly number[]): number {
  const harm = residuals.map((residual, row) => {
    const leverage = columns.reduce((sum, column) => sum + at(column, row) ** 2, 0);
    return residual ** 2 / Math.max(1 - leverage, Number.EPSILON);
  });
  return harm.indexOf(Math.max(...harm));
}

function spreadOf(residuals: readonly number[]): number {
  const sizes = residuals.map(Math.abs).sort((one, other) => one - other);
  return SPREAD_OF_MEDIAN * at(sizes, Math.floor(sizes.length / 2));
}

/** An entry of which the loop around it says that it is there. */
function at(entries: readonly number[], index: number): number {
  return entries[index] as number;
}

function requireRows(
  terms: readonly (readonly number[])[],
  values: readonly number[],
  size: number,
): void {
  const where = "fitRobustly";
  if (values.length < size || size === 0) {
    const need = `at least as many numbers as terms, ${Math.max(size, 1)}`;
    refuse("wrong-count", where, "values", values, need);
  }
  if (terms.length !== values.length || terms.some((row) => row.length !== size)) {
    refuse("wrong-count", where, "terms", terms, `${values.length} rows of ${size} numbers`);
  }
  values.forEach((value, index) => requireFinite(where, `values[${index}]`, value));
  terms.forEach((row, index) => {
    row.forEach((term, column) => requireFinite(where, `terms[${index}][${column}]`, term));
  });
}

function refuseTerms(): never {
  const need = "terms that differ";
  refuse("ill-conditioned", "fitRobustly", "terms", "dependent", need);
}
