import type { Point, Unit } from "../../units/index.js";
import type { Cubic } from "./cubic.js";

/**
 * A closed path of cubics as SVG path data, in the coordinates of its own space: in the face space y
 * points up, and whoever draws it turns it over. Coordinates are rounded to so many digits.
 *
 * @example
 * ```ts
 * import { px } from "brow-geometry";
 * import { pathData } from "brow-geometry/geometry";
 * const [one, other] = [px([0, 0]), px([8, 0])];
 * pathData([[one, px([0, 8]), px([8, 8]), other], [other, px([6, 0]), px([2, 0]), one]]);
 * // → "M0 0C0 8 8 8 8 0C6 0 2 0 0 0Z"
 * ```
 */
export function pathData<U extends Unit>(path: readonly Cubic<U>[], digits = 3): string {
  const [first] = path;
  if (first === undefined) return "";
  const shown = (point: Point<U>): string =>
    `${rounded(point[0], digits)} ${rounded(point[1], digits)}`;
  const curves = path.map(
    ([, leaving, arriving, to]) => `C${shown(leaving)} ${shown(arriving)} ${shown(to)}`,
  );
  return `M${shown(first[0])}${curves.join("")}Z`;
}

/** Without trailing zeros, and without a minus before nothing. */
function rounded(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)) + 0);
}
