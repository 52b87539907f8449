import { requireFinite, requireFinitePoint } from "../quantities/require.js";
import { refusingAs, refuse } from "../quantities/geometry-error.js";
import type { DeepPoint, FlatPoint, Length, Point, Unit, UnitTag } from "../quantities/quantity.js";

/**
 * A value with its standard uncertainty `u` (one standard deviation), both in the value's unit. A plan
 * writes `Infinity` where nothing is known of it; no reading may come so.
 *
 * Source: JCGM 100:2008 (GUM), 2.3.1.
 */
export interface Measured<Value extends number = number> {
  readonly value: Value;
  readonly u: Value;
}

/**
 * Pairs a value with its standard uncertainty, which is 0 or more.
 *
 * @throws GeometryError `not-finite`, `out-of-range`
 *
 * @example
 * ```ts
 * import { measured, mm } from "brow-geometry";
 * measured(mm(52.5), mm(0.3)); // → { value: 52.5, u: 0.3 }
 * ```
 */
export function measured<Value extends number>(value: Value, u: Value): Measured<Unliteral<Value>> {
  return refusingAs("measured", () => measuredAs(value, u));
}

/** {@link measured}, asked for by another function. */
export function measuredAs<Value extends number>(
  value: Value,
  u: Value,
): Measured<Unliteral<Value>> {
  requireFinite("value", value);
  requireUncertainty("u", u);
  return { value, u } as Measured as Measured<Unliteral<Value>>;
}

/** A number without unit is any number, not the literal that stood in the call. */
export type Unliteral<Value> =
  Value extends UnitTag<never, unknown> ? Value : Value extends number ? number : Value;

/** Standard uncertainty of a point: one for every axis, or each axis its own. */
export type PointUncertainty<U extends Unit> =
  | Length<U>
  | readonly [x: Length<U>, y: Length<U>]
  | readonly [x: Length<U>, y: Length<U>, depth: Length<U>];

/** A point with its standard uncertainty, both in the point's unit. */
export interface MeasuredPoint<U extends Unit, Value extends Point<U> = Point<U>> {
  readonly value: Value;
  readonly u: PointUncertainty<U>;
}

/**
 * Pairs a point with its standard uncertainty: one for every axis, or each axis its own.
 *
 * @throws GeometryError `not-finite`, `out-of-range` where an uncertainty is missing or negative
 *
 * @example
 * ```ts
 * import { measuredPoint } from "brow-geometry/units";
 * import { mm } from "brow-geometry";
 * measuredPoint(mm([14, 22, 4]), [mm(0.3), mm(0.3), mm(2)]).u; // → [0.3, 0.3, 2]
 * ```
 */
export function measuredPoint<U extends Unit>(
  value: FlatPoint<U>,
  u: PointUncertainty<U>,
): MeasuredPoint<U, FlatPoint<U>>;
export function measuredPoint<U extends Unit>(
  value: DeepPoint<U>,
  u: PointUncertainty<U>,
): MeasuredPoint<U, DeepPoint<U>>;
export function measuredPoint<U extends Unit>(
  value: Point<U>,
  u: PointUncertainty<U>,
): MeasuredPoint<U>;
export function measuredPoint<U extends Unit>(
  value: Point<U>,
  u: PointUncertainty<U>,
): MeasuredPoint<U> {
  return refusingAs("measuredPoint", () => {
    requireFinitePoint("value", value);
    value.forEach((_, axis) => {
      requireUncertainty("u", typeof u === "number" ? u : u[axis]);
    });
    return { value, u };
  });
}

export function requireUncertainty(field: string, u: number | undefined): asserts u is number {
  if (!(u !== undefined && u >= 0 && Number.isFinite(u))) {
    refuse(Number.isFinite(u) ? "out-of-range" : "not-finite", field, u, "0 or more");
  }
}
