import { refusingAs, refuse, requireFinite, requirePositive } from "../../units/internal.js";
import { bisquare, BISQUARE_CUT } from "./bisquare.js";
import {
  addTo,
  columnsOf,
  DEPENDENT,
  orthonormalBasis,
  solveTriangle,
  zeros,
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
  return refusingAs("fitRobustly", () => {
    const size = terms[0]?.length ?? 0;
    requireRows(terms, values, size);
    requirePositive("spread", spread);
    const { coefficients, residuals, weights } = robustFit(columnsOf(terms), values, spread);
    return { coefficients, residuals: [...residuals], weights: [...weights] };
  });
}

/** As {@link fitRobustly}, of terms in columns, with as many finite numbers as its caller knows there are. */
export function robustFit(
  terms: readonly Float64Array[],
  values: readonly number[],
  spread: number,
): FitInRows {
  const basis = orthonormalBasis(terms);
  if (basis === undefined) refuseTerms();
  const { columns, triangle } = basis;
  const sides = [...columns, new Float64Array(values)];
  const weights = new Float64Array(values.length).fill(1);
  const residuals = weights.slice();
  const equations = columns.map(() => zeros(sides.length));
  const solve = (): readonly number[] => solveWeighted(sides, weights, equations, residuals);
  let factors = solve();
  if (values.length > sides.length) {
    weights[mostHarmful(columns, residuals)] = 0;
    solve();
    const reach = BISQUARE_CUT * Math.max(spread, spreadOf(residuals));
    for (let step = 0, change = 1; step < MOST_STEPS && change > SETTLED; step += 1) {
      change = 0;
      for (let row = 0; row < residuals.length; row += 1) {
        const next = bisquare((at(residuals, row) / reach) ** 2);
        change = Math.max(change, Math.abs(next - at(weights, row)));
        weights[row] = next;
      }
      factors = solve();
    }
  }
  return { coefficients: solveTriangle(triangle, factors), residuals, weights };
}

interface FitInRows extends Pick<RobustFit, "coefficients"> {
  readonly residuals: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Factors with which columns run closest to the values behind them, each of which counts by its weight, and what
 * is left of the values: by normal equations that are eliminated as they are set up. Between the columns of a basis
 * these lose no digits.
 *
 * @param equations rows to write into: each equation from its own factor on, at its end what it amounts to
 * @param residuals a row to write into, likewise
 */
function solveWeighted(
  columns: readonly Float64Array[],
  weights: Float64Array,
  equations: readonly number[][],
  residuals: Float64Array,
): readonly number[] {
  const size = equations.length;
  for (let term = 0; term < size; term += 1) {
    const equation = equations[term] as number[];
    for (let side = term; side <= size; side += 1) {
      const [one, other] = [columns[term] as Float64Array, columns[side] as Float64Array];
      let sum = 0;
      for (let row = 0; row < one.length; row += 1) {
        sum += at(weights, row) * at(one, row) * at(other, row);
      }
      for (let before = 0; before < term; before += 1) {
        const earlier = equations[before] as number[];
        sum -=
          ((earlier[term] as number) * (earlier[side] as number)) / (earlier[before] as number);
      }
      equation[side] = sum;
    }
    // The columns had length 1: of one that has lost nearly all of it, nothing is left but rounding.
    if (!((equation[term] as number) > DEPENDENT)) refuseTerms();
  }
  const factors = solveTriangle(
    equations,
    equations.map((equation) => equation[size] as number),
  );
  residuals.set(columns[size] as Float64Array);
  factors.forEach((factor, term) => {
    addTo(residuals, columns[term] as Float64Array, -factor);
  });
  return factors;
}

/** The value without which the sum of squares falls furthest, by residual² / (1 − leverage). */
function mostHarmful(columns: readonly Float64Array[], residuals: Float64Array): number {
  const harm = residuals.map((residual, row) => {
    const leverage = columns.reduce((sum, column) => sum + at(column, row) ** 2, 0);
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
  if (values.length < size || size === 0) {
    const need = `at least as many numbers as terms, ${Math.max(size, 1)}`;
    refuse("wrong-count", "values", values, need);
  }
  if (terms.length !== values.length || terms.some((row) => row.length !== size)) {
    refuse("wrong-count", "terms", terms, `${values.length} rows of ${size} numbers`);
  }
  values.forEach((value, index) => requireFinite(`values[${index}]`, value));
  terms.forEach((row, index) => {
    row.forEach((term, column) => requireFinite(`terms[${index}][${column}]`, term));
  });
}

function refuseTerms(): never {
  const need = "terms that differ";
  refuse("ill-conditioned", "terms", "dependent", need);
}
