import { type Correlation, correlationFactor, product } from "./correlation.js";
import { refusingAs, refuse } from "../quantities/geometry-error.js";
import {
  type Coordinate,
  coordinatesOf,
  type InputComponent,
  type MeasuredInputs,
  type PlainValues,
  plainValues,
  withCoordinate,
} from "./measured-inputs.js";
import {
  type Component,
  componentAt,
  componentsOf,
  inShapeOf,
  type MeasureResult,
  type UncertaintyOf,
} from "./result-components.js";

/** A result with the standard uncertainty of everything in it, in the same shape. */
export interface Propagated<Result> {
  readonly value: Result;
  readonly u: UncertaintyOf<Result>;
  /** Names of the rows and columns of `covariance`: `front`, `arch.x`; `value` for a scalar. */
  readonly components: readonly string[];
  readonly covariance: readonly (readonly number[])[];
}

/** Options of {@link propagate}. */
export interface PropagationOptions<Name extends string = string> {
  /** How inputs vary together; what is not named is independent. */
  readonly correlations?: readonly Correlation<Name>[];
  /**
   * `"required"` (default) takes the slopes at the centre, and throws where the function is too
   * nonlinear, within its own uncertainty, for first order; `"assumed"` takes them without that
   * check. `"averaged"` takes the mean slopes over ± one uncertainty of each input: for measures
   * with corners, such as where a guide meets a polyline.
   */
  readonly linearity?: "required" | "assumed" | "averaged";
}

/**
 * The result of a measure with its standard uncertainty, to first order, from those of its inputs.
 *
 * The measure is any plain function of the inputs' values; its slopes are taken numerically. An
 * entry of a record that is undefined stays undefined.
 *
 * Source: JCGM 100:2008 (GUM).
 *
 * @throws GeometryError `not-finite`, `out-of-range`, `inconsistent` for inputs or correlations
 * that cannot be; `no-solution` where an entry ceases to exist at the smallest change of an input;
 * `ill-conditioned` where first order does not hold, such as for a direction whose baseline is
 * under five of its own uncertainties
 *
 * @example
 * ```ts
 * import { distance } from "brow-geometry/geometry";
 * import { measuredPoint, propagate } from "brow-geometry/units";
 * import { mm } from "brow-geometry";
 * const front = propagate(({ start, arch }) => distance(start, arch), {
 *   start: measuredPoint(mm([14, 20]), mm(0.26)),
 *   arch: measuredPoint(mm([38, 27]), mm(0.26)),
 * });
 * front.value; // → 25
 * front.u; // → 0.368
 * ```
 */
export function propagate<Inputs extends MeasuredInputs, Result extends MeasureResult<Result>>(
  measure: (inputs: PlainValues<Inputs>) => Result,
  inputs: Inputs,
  options: PropagationOptions<InputComponent<Inputs>> = {},
): Propagated<Result> {
  return refusingAs("propagate", () => {
    const coordinates = coordinatesOf(inputs);
    const factor = correlationFactor(coordinates, options.correlations ?? []);
    const centre = plainValues(coordinates, ({ value }) => value);
    const value = measure(centre as PlainValues<Inputs>);
    const components = componentsOf(value);
    const numbers = components.map((component) => componentAt(value, component) as number);
    const read = (values: unknown): Reading => {
      const result = measure(values as PlainValues<Inputs>);
      return components.map((component) => componentAt(result, component));
    };

    const { linearity = "required" } = options;
    const share = linearity === "averaged" ? OVER_UNCERTAINTY : AT_CENTRE;
    const slopes = coordinates.map((coordinate) =>
      slopesAlong(coordinate, components, numbers, share, (moved) =>
        read(withCoordinate(centre, coordinate, moved)),
      ),
    );
    const own = components.map((_, row) =>
      coordinates.map(({ u }, column) => (slopes[column]?.[row] ?? 0) * u),
    );
    // What one standard deviation of each independent source of scatter makes of each component.
    const shares = factor === undefined ? own : own.map((row) => timesFactor(row, factor));
    const covariance = shares.map((one) => shares.map((other) => product(one, other)));
    const deviations = covariance.map((row, index) => Math.sqrt(row[index] as number));

    if (linearity === "required") {
      components.forEach(({ name }, index) => {
        const u = deviations[index] as number;
        if (u === 0) return;
        const scatter = (shares[index] as readonly number[]).map((share) => share / u);
        const steps = factor === undefined ? scatter : factorTimes(factor, scatter);
        const [up, down] = [1, -1].map((sign) => {
          const moved = plainValues(
            coordinates,
            (coordinate, column) =>
              coordinate.value + sign * coordinate.u * (steps[column] as number),
          );
          return read(moved)[index];
        });
        const size = Math.max(
          1,
          Math.abs(numbers[index] as number),
          Math.hypot(...(own[index] ?? [])),
        );
        requireStraight(name, u, up, down, ROUNDING * size);
      });
    }

    return {
      value,
      u: inShapeOf(value, components, deviations) as UncertaintyOf<Result>,
      components: components.map(({ name }) => name),
      covariance,
    };
  });
}

/** What a direction shows whose baseline is five of its uncertainties: 1.3 % between chord and slope. */
const MOST_BEND = 1 - 5 * Math.atan(1 / 5);

/** What slopes taken numerically may be off by, as a share of the size of what they are taken of. */
const ROUNDING = 1e-9;

/**
 * Refuses a component that, moved by its own uncertainty in the direction in which it changes most,
 * does not change by that uncertainty.
 */
function requireStraight(
  field: string,
  u: number,
  up: number | undefined,
  down: number | undefined,
  rounding: number,
): void {
  const swing = up === undefined || down === undefined ? Number.NaN : (up - down) / 2;
  if (Math.abs(swing - u) <= MOST_BEND * u + rounding) return;
  refuse(
    "ill-conditioned",
    field,
    `± ${u} to first order, ± ${swing} one uncertainty away`,
    "inputs so certain that first order holds, or propagateByMonteCarlo",
  );
}

function timesFactor(
  row: readonly number[],
  factor: readonly (readonly number[])[],
): readonly number[] {
  return row.map((_, column) =>
    row.reduce((sum, entry, index) => sum + entry * (factor[index]?.[column] ?? 0), 0),
  );
}

function factorTimes(
  factor: readonly (readonly number[])[],
  column: readonly number[],
): readonly number[] {
  return factor.map((row) => row.reduce((sum, entry, at) => sum + entry * (column[at] ?? 0), 0));
}

/** The numbers of a result by component; undefined where there is none. */
type Reading = readonly (number | undefined)[];

/**
 * How fast each component changes with one coordinate: central differences over a step of a share of
 * its uncertainty. Where a component exists on one side only, that side decides.
 */
function slopesAlong(
  coordinate: Coordinate,
  components: readonly Component[],
  centre: readonly number[],
  share: number,
  readAt: (value: number) => Reading,
): readonly number[] {
  const { value, u, name } = coordinate;
  const step = Math.max(share * u, SHARE_OF_VALUE * Math.abs(value));
  // What is left of the step once it is added: rounding must not count as slope.
  const high = value + step;
  const low = value - step;
  if (u === 0 || high === low) return components.map(() => 0);
  const above = readAt(high);
  const below = readAt(low);
  return components.map((component, index) => {
    const up = above[index];
    const down = below[index];
    if (up !== undefined && down !== undefined) return (up - down) / (high - low);
    if (up !== undefined) return (up - (centre[index] as number)) / (high - value);
    if (down !== undefined) return ((centre[index] as number) - down) / (value - low);
    const need = `a result when ${name} changes by ${step}`;
    refuse("no-solution", component.name, undefined, need);
  });
}

/** A step for slopes at the centre: small against the bends of a measure, large against rounding. */
const AT_CENTRE: number = 2 ** -10;
/** A step for mean slopes: as far as the coordinate is uncertain. */
const OVER_UNCERTAINTY: number = 1;

/** About the cube root of the rounding of a double, where both errors of a difference balance. */
const SHARE_OF_VALUE = 2 ** -18;
