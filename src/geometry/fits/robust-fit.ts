import { refuse, requireFinite, requirePositive } from "../../units/internal.js";
import { bisquare, BISQUARE_CUT } from "./bisquare.js";
import { columnsOf, DEPENDENT, orthonormalBasis, solveTriangle } from "./least-squares.js";

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
  const basis = orthonormalBasis(columnsOf(terms));
  if (basis === undefined) refuseTerms();
  const { columns, triangle } = basis;
  const fit = weightedFit(columns, values);
  const { weights, factors, residuals } = fit;
  solve(fit);
  if (values.length >= columns.length + 2) {
    weights[mostHarmful(columns, residuals)] = 0;
    solve(fit);
    const reach = BISQUARE_CUT * Math.max(spread, spreadOf(residuals));
    for (let step = 0, change = 1; step < MOST_STEPS && change > SETTLED; step += 1) {
      change = 0;
      for (let row = 0; row < residuals.length; row += 1) {
        const next = bisquare((at(residuals, row) / reach) ** 2);
        change = Math.max(change, Math.abs(next - at(weights, row)));
        weights[row] = next;
      }
      solve(fit);
    }
  }
  return {
    coefficients: solveTriangle(triangle, [...factors]),
    residuals: [...residuals],
    weights: [...weights],
  };
}

/** Least squares in which each value counts by its weight, in rows that are written again and again. */
interface WeightedFit {
  /** The columns of a basis one after the other, and the values behind them. */
  readonly columns: Float64Array;
  readonly weights: Float64Array;
  /** Of each equation what stands from its own factor on, and at its end what it amounts to. */
  readonly equations: Float64Array;
  /** One for each column. */
  readonly factors: Float64Array;
  readonly residuals: Float64Array;
}

function weightedFit(
  columns: readonly (readonly number[])[],
  values: readonly number[],
): WeightedFit {
  const size = columns.length;
  const count = values.length;
  const inRow = new Float64Array((size + 1) * count);
  [...columns, values].forEach((column, term) => {
    inRow.set(column, term * count);
  });
  return {
    columns: inRow,
    weights: new Float64Array(count).fill(1),
    equations: new Float64Array(size * (size + 1)),
    factors: new Float64Array(size),
    residuals: new Float64Array(count),
  };
}

/**
 * Finds factors and residuals for weights, by normal equations that are eliminated as they are set up: between the
 * columns of a basis these lose no digits.
 */
function solve({ columns, weights, equations, factors, residuals }: WeightedFit): void {
  const size = factors.length;
  const count = weights.length;
  const width = size + 1;
  for (let term = 0; term < size; term += 1) {
    for (let side = term; side <= size; side += 1) {
      let sum = 0;
      for (let row = 0; row < count; row += 1) {
        sum += at(weights, row) * at(columns, term * count + row) * at(columns, side * count + row);
      }
      for (let before = 0; before < term; before += 1) {
        const earlier = before * width;
        sum -=
          (at(equations, earlier + term) * at(equations, earlier + side)) /
          at(equations, earlier + before);
      }
      equations[term * width + side] = sum;
    }
    // The columns had length 1: of one that has lost nearly all of it, nothing is left but rounding.
    if (!(at(equations, term * width + term) > DEPENDENT)) refuseTerms();
  }
  for (let term = size - 1; term >= 0; term -= 1) {
    const own = term * width;
    let rest = at(equations, own + size);
    for (let later = term + 1; later < size; later += 1) {
      rest -= at(equations, own + later) * at(factors, later);
    }
    factors[term] = rest / at(equations, own + term);
  }
  for (let row = 0; row < count; row += 1) {
    let rest = at(columns, size * count + row);
    for (let term = 0; term < size; term += 1) {
      rest -= at(factors, term) * at(columns, term * count + row);
    }
    residuals[row] = rest;
  }
}

/** The value without which the sum of squares falls furthest, by residual² / (1 − leverage). */
function mostHarmful(columns: readonly (readonly number[])[], residuals: Float64Array): number {
  const harm = residuals.map((residual, row) => {
    const leverage = columns.reduce((sum, column) => sum + (column[row] as number) ** 2, 0);
    return residual ** 2 / Math.max(1 - leverage, Number.EPSILON);
  });
  return harm.indexOf(Math.max(...harm));
}

function spreadOf(residuals: Float64Array): number {
  const sizes = residuals.map(Math.abs).sort();
  return SPREAD_OF_MEDIAN * at(sizes, Math.floor(sizes.length / 2));
}

/** An entry of which the loop around it says that it is there. */
function at(entries: Float64Array, index: number): number {
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
