import { type Correlation, correlationFactor, product } from "./correlation.js";
import { refusingAs, refuse } from "../quantities/geometry-error.js";
import {
  coordinatesOf,
  type InputComponent,
  type MeasuredInputs,
  type PlainValues,
  plainValues,
} from "./measured-inputs.js";
import { deviationsFrom } from "./random.js";
import {
  componentAt,
  componentsOf,
  inShapeOf,
  type MeasureResult,
  type ResultPart,
  type UncertaintyOf,
} from "./result-components.js";

/** The ends of an interval. */
export type Interval<Value extends number = number> = readonly [low: Value, high: Value];

/** Coverage intervals in the shape of what they belong to; a point has one for each axis. */
export type IntervalsOf<Result> = Result extends number
  ? Interval<Result>
  : Result extends ResultPart
    ? readonly Interval[]
    : { readonly [Name in keyof Result]: IntervalsOf<Result[Name]> };

/** A result as many draws describe it. */
export interface MonteCarloResult<Result> {
  /** Mean of the draws. */
  readonly value: Result;
  /** Standard deviation of the draws. */
  readonly u: UncertaintyOf<Result>;
  /** The shortest interval that holds the share of draws asked for. */
  readonly interval: IntervalsOf<Result>;
  /** Names of the rows and columns of `covariance`: `front`, `arch.x`; `value` for a scalar. */
  readonly components: readonly string[];
  readonly covariance: readonly (readonly number[])[];
  /** Share of the draws in which each component existed, in the order of `components`. */
  readonly answered: readonly number[];
}

/** Options of {@link propagateByMonteCarlo}. */
export interface MonteCarloOptions<Inputs extends MeasuredInputs> {
  /** A whole number; the same seed gives the same draws. */
  readonly seed: number;
  /** Default 10,000. */
  readonly draws?: number;
  /** Share of the draws that an interval holds; default 0.95. */
  readonly coverage?: number;
  /** How inputs vary together; what is not named is independent. Normal inputs only. */
  readonly correlations?: readonly Correlation<InputComponent<Inputs>>[];
  /** How each input is distributed; default `"normal"`. */
  readonly distributions?: { readonly [Name in keyof Inputs]?: "normal" | "rectangular" };
}

/**
 * The result of a measure with its standard uncertainty and coverage interval, from draws of its
 * inputs: for functions that are too nonlinear for {@link propagate}, and to check it.
 *
 * An entry of a record that is undefined at the inputs' own values stays undefined; one that is
 * undefined in some draws is described by the others, and `answered` says how many those were.
 *
 * Source: JCGM 101:2008 (GUM Supplement 1).
 *
 * @throws GeometryError as {@link propagate}; `out-of-range` for a seed that is not whole, fewer
 * than 100 draws or a coverage outside 0…1; `no-solution` where no two draws have a component
 *
 * @example
 * ```ts
 * import { measured, mm } from "brow-geometry";
 * import { propagateByMonteCarlo } from "brow-geometry/units";
 * const share = propagateByMonteCarlo(
 *   ({ front, tail }) => front / (front + tail),
 *   { front: measured(mm(33), mm(0.4)), tail: measured(mm(16.5), mm(0.4)) },
 *   { seed: 7 },
 * );
 * share.u; // → 0.006
 * share.interval; // → [0.655, 0.679]
 * ```
 */
export function propagateByMonteCarlo<
  Inputs extends MeasuredInputs,
  Result extends MeasureResult<Result>,
>(
  measure: (inputs: PlainValues<Inputs>) => Result,
  inputs: Inputs,
  options: MonteCarloOptions<Inputs>,
): MonteCarloResult<Result> {
  return refusingAs("propagateByMonteCarlo", () => {
    const { seed, draws = 10_000, coverage = 0.95, correlations = [] } = options;
    requireDraws(draws, coverage);
    const coordinates = coordinatesOf(inputs);
    const factor = correlationFactor(coordinates, correlations);
    const deviations = deviationsFrom(seed);
    const kinds = coordinates.map(({ input }) => options.distributions?.[input] ?? "normal");
    if (factor !== undefined) requireNormal(kinds);

    const centre = measure(plainValues(coordinates, ({ value }) => value) as PlainValues<Inputs>);
    const components = componentsOf(centre);
    const columns = components.map(() => new Float64Array(draws).fill(Number.NaN));
    for (let draw = 0; draw < draws; draw += 1) {
      const independent = kinds.map((kind) => deviations[kind]());
      const steps = factor?.map((row) => product(row, independent)) ?? independent;
      const result = measure(
        plainValues(
          coordinates,
          ({ value, u }, index) => value + u * (steps[index] as number),
        ) as PlainValues<Inputs>,
      );
      components.forEach((component, index) => {
        const number = componentAt(result, component);
        if (number !== undefined) (columns[index] as Float64Array)[draw] = number;
      });
    }

    const answers = columns.map((column) => column.filter((value) => !Number.isNaN(value)).sort());
    answers.forEach((column, index) => requireAnswers(components[index]?.name ?? "", column));
    const means = answers.map(meanOf);
    const centred = columns.map((column, index) =>
      column.map((value) => value - (means[index] ?? 0)),
    );
    const covariance = centred.map((one) => centred.map((other) => covarianceOf(one, other)));
    const shaped = (numbers: readonly unknown[]): unknown => inShapeOf(centre, components, numbers);
    return {
      value: shaped(means) as Result,
      u: shaped(
        covariance.map((row, index) => Math.sqrt(row[index] ?? 0)),
      ) as UncertaintyOf<Result>,
      interval: shaped(
        answers.map((column) => shortestInterval(column, coverage)),
      ) as IntervalsOf<Result>,
      components: components.map(({ name }) => name),
      covariance,
      answered: answers.map((column) => column.length / draws),
    };
  });
}

/** Fewer draws than this say nothing about the ends of an interval. */
const LEAST_DRAWS = 100;

function requireDraws(draws: number, coverage: number): void {
  if (!Number.isInteger(draws) || draws < LEAST_DRAWS) {
    refuse("out-of-range", "draws", draws, `a whole number of at least ${LEAST_DRAWS}`);
  }
  if (!(coverage > 0 && coverage < 1)) {
    refuse("out-of-range", "coverage", coverage, "more than 0 and less than 1");
  }
}

function requireNormal(kinds: readonly ("normal" | "rectangular")[]): void {
  if (kinds.every((kind) => kind === "normal")) return;
  const need = "normal inputs wherever correlations are given";
  refuse("out-of-range", "distributions", "rectangular", need);
}

function requireAnswers(field: string, column: Float64Array): void {
  if (column.length >= 2) return;
  refuse("no-solution", field, undefined, "a result in at least two of the draws");
}

function meanOf(column: Float64Array): number {
  return column.reduce((sum, value) => sum + value, 0) / column.length;
}

/** Covariance over the draws in which both exist: where one is NaN, so is the product. */
function covarianceOf(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  let count = 0;
  for (let draw = 0; draw < one.length; draw += 1) {
    const product = (one[draw] as number) * (other[draw] as number);
    if (Number.isNaN(product)) continue;
    sum += product;
    count += 1;
  }
  return count < 2 ? 0 : sum / (count - 1);
}

/**
 * The shortest interval that holds a share of the draws, which come in ascending order; of equally
 * short ones the lowest.
 *
 * Source: JCGM 101:2008 (GUM Supplement 1).
 */
function shortestInterval(
  ascending: ArrayLike<number>,
  share: number,
): readonly [low: number, high: number] {
  const at = (index: number): number => ascending[index] as number;
  const last = ascending.length - 1;
  const span = Math.min(last, Math.max(1, Math.round(share * ascending.length)));
  let low = 0;
  for (let start = 1; start + span <= last; start += 1) {
    if (at(start + span) - at(start) < at(low + span) - at(low)) low = start;
  }
  return [at(low), at(low + span)];
}
