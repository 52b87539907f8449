import { requireFinite } from "./finite.js";
import { GeometryError } from "./geometry-error.js";

/**
 * A value with its standard uncertainty `u` (one standard deviation), both in the value's unit.
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
export function measured<Value extends number>(value: Value, u: Value): Measured<Value> {
  requireFinite("measured", "value", value);
  requireFinite("measured", "u", u);
  if (u < 0) {
    throw new GeometryError("out-of-range", {
      where: "measured",
      field: "u",
      value: u,
      need: "0 or more",
    });
  }
  return { value, u };
}
