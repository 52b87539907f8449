import { refusingAs, refuse, requireFinite, requirePositive } from "../../units/internal.js";
import { bisquare, BISQUARE_CUT } from "./bisquare.js";
import {
  addTo,
  type Basis,
  closestFactors,
  columnsOf,
  dot,
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
/** A fit nearby is asked for a slope, not for its last digits. */
const NEARLY = 1e-7;

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

/**
 * As {@link fitRobustly}, of terms in columns, with as many finite numbers as its caller knows there are.
 *
 * @param near a fit of terms and values that differ a little, to start from
 */
export function robustFit(
  terms: readonly Float64Array[],
  values: ArrayLike<number>,
  spread: number,
  near?: FitInRows,
): FitInRows {
  const residuals = new Float64Array(values);
  const weights = residuals.slice().fill(1);
  const pulls = residuals.slice();
  const coefficients = zeros(terms.length);
  const move = (steps: ArrayLike<number>): void => {
    for (let term = 0; term < terms.length; term += 1) {
      const step = steps[term] as number;
      coefficients[term] = (coefficients[term] as number) + step;
      addTo(residuals, terms[term] as Float64Array, -step);
    }
  };
  let reach = near?.reach ?? Number.POSITIVE_INFINITY;
  if (near === undefined) {
    const basis = basisOf(terms);
    move(closestFactors(basis, residuals));
    if (values.length > terms.length + 1) {
      move(withoutWorst(basis, residuals));
      reach = BISQUARE_CUT * Math.max(spread, spreadOf(residuals));
    }
  } else {
    move(near.coefficients);
  }
  let ways = near?.ways ?? [];
  let isNear = near !== undefined;
  const settled = isNear ? NEARLY : SETTLED;
  for (let step = 0, change = 1; step < MOST_STEPS && change > settled; step += 1) {
    change = 0;
    let farthest = 0;
    for (let row = 0; row < residuals.length; row += 1) {
      const square = (at(residuals, row) / reach) ** 2;
      const next = bisquare(square);
      farthest = Math.max(farthest, square);
      change = Math.max(change, Math.abs(next - at(weights, row)));
      weights[row] = next;
      pulls[row] = next * at(residuals, row);
    }
    // Where values may be left out on the way, or the way is long, a fit starts anew.
    if (near && (farthest > FALLING || step > FOLLOWED)) return robustFit(terms, values, spread);
    if (!isNear) ways = waysOf(terms, weights);
    move(stepBy(ways, terms, pulls));
    // Steps by weights that are nearly the last ones cost a fraction.
    isNear ||= farthest <= FALLING && change < CLOSE;
  }
  return { coefficients, residuals, weights, reach, ways };
}

/** A fit whose numbers stand in rows. */
export interface FitInRows extends Pick<RobustFit, "coefficients"> {
  readonly residuals: Float64Array;
  readonly weights: Float64Array;
  /** What lies farther from the fit counts for nothing. */
  readonly reach: number;
  /** What coefficients follow pulls by. */
  readonly ways: Ways;
}

/** Directions of coefficients, each as long as it goes for a pull of 1 along it. */
type Ways = readonly Float64Array[];

/** A fit nearby is followed for so many steps at most. */
const FOLLOWED = 40;
/** From this share of the reach on, squared, a value pulls the less the farther off it lies. */
const FALLING = 1 / 5;
/** Where weights change by less, the end is near. */
const CLOSE = 0.05;

function waysOf(terms: readonly Float64Array[], weights: Float64Array): Ways {
  const { triangle } = basisOf(terms, weights);
  return triangle.map((row, way) => {
    const pull = row.map((_, term) => Number(term === way));
    return new Float64Array(solveTriangle(triangle, pull));
  });
}

function stepBy(ways: Ways, terms: readonly Float64Array[], pulls: Float64Array): Float64Array {
  const slopes = new Float64Array(terms.map((term) => dot(term, pulls)));
  const step = slopes.slice().fill(0);
  for (const way of ways) addTo(step, way, dot(way, slopes));
  return step;
}

/** Terms as a basis, each value counting by its weight where that is given. */
function basisOf(terms: readonly Float64Array[], weights?: Float64Array): Basis {
  const counted = weights
    ? terms.map((column) => column.map((term, row) => term * Math.sqrt(at(weights, row))))
    : terms;
  return orthonormalBasis(counted) ?? refuseTerms();
}

/**
 * Where a least-squares fit moves without the value whose absence lets the sum of squares fall furthest, by
 * residual² / (1 − leverage).
 */
function withoutWorst(basis: Basis, residuals: Float64Array): readonly number[] {
  const room = residuals.map((_, row) => {
    const leverage = basis.columns.reduce((sum, column) => sum + at(column, row) ** 2, 0);
    return Math.max(1 - leverage, Number.EPSILON);
  });
  const harm = residuals.map((residual, row) => residual ** 2 / at(room, row));
  const worst = harm.indexOf(Math.max(...harm));
  return closestFactors(
    basis,
    residuals.map((residual, row) => (row === worst ? -residual / at(room, row) : 0)),
  );
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
