import { requireFinite, requireFinitePoint } from "../quantities/require.js";
import {
  type Measured,
  type MeasuredPoint,
  requireUncertainty,
  type Unliteral,
} from "./measured.js";
import type { Point } from "../quantities/quantity.js";

/** What uncertainty is propagated from: scalars and points by name. */
export type MeasuredInputs = Readonly<
  Record<string, Measured | MeasuredPoint<"px"> | MeasuredPoint<"mm">>
>;

/** The plain values of measured inputs, by the same names. */
export type PlainValues<Inputs extends MeasuredInputs> = {
  readonly [Name in keyof Inputs]: Unliteral<Inputs[Name]["value"]>;
};

/** Name of one number among the inputs: a scalar's own, or `name.x`, `name.y`, `name.depth`. */
export type InputComponent<Inputs extends MeasuredInputs> = {
  [Name in keyof Inputs & string]: Inputs[Name]["value"] extends number
    ? Name
    : `${Name}.${"x" | "y" | "depth"}`;
}[keyof Inputs & string];

/** One uncertain number among the inputs. */
export interface Coordinate {
  /** Its name, `arch.x` for a coordinate of the point `arch`. */
  readonly name: string;
  readonly input: string;
  /** Its place in the point; undefined for a scalar. */
  readonly axis: number | undefined;
  readonly value: number;
  readonly u: number;
}

export const AXES: readonly string[] = ["x", "y", "depth"];

/** Every number of the inputs, in order; refuses what is not finite. */
export function coordinatesOf(inputs: MeasuredInputs): readonly Coordinate[] {
  return Object.entries(inputs).flatMap(([input, { value, u }]) => {
    if (typeof value === "number") {
      requireFinite(`${input}.value`, value);
      return [coordinateOf(input, undefined, value, u as number)];
    }
    requireFinitePoint(`${input}.value`, value as Point<"px">);
    return [...value].map((coordinate, axis) =>
      coordinateOf(input, axis, coordinate, typeof u === "number" ? u : u[axis]),
    );
  });
}

function coordinateOf(
  input: string,
  axis: number | undefined,
  value: number,
  u: number | undefined,
): Coordinate {
  const name = axis === undefined ? input : `${input}.${AXES[axis] ?? axis}`;
  requireUncertainty(`${name}: u`, u);
  return { name, input, axis, value, u };
}

type PlainValue = number | readonly number[];

/** The plain values of all inputs, some of their coordinates elsewhere than at their centre. */
export function plainValues(
  coordinates: readonly Coordinate[],
  valueAt: (coordinate: Coordinate, index: number) => number,
): Record<string, PlainValue> {
  const values: Record<string, number | number[]> = {};
  coordinates.forEach((coordinate, index) => {
    const { input, axis } = coordinate;
    const value = valueAt(coordinate, index);
    if (axis === undefined) values[input] = value;
    else if (axis === 0) values[input] = [value];
    else (values[input] as number[]).push(value);
  });
  return values;
}

/** The same values with one coordinate elsewhere: nothing else is copied. */
export function withCoordinate(
  values: Readonly<Record<string, PlainValue>>,
  { input, axis }: Coordinate,
  value: number,
): Record<string, PlainValue> {
  const whole = values[input];
  const moved =
    axis === undefined
      ? value
      : (whole as readonly number[]).map((own, index) => (index === axis ? value : own));
  return { ...values, [input]: moved };
}
