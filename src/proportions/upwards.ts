import { type Direction, type Line, pointOnLine } from "../geometry/index.js";
import { type FlatPoint, flatPoint, length, type Point } from "../units/index.js";

/** The direction of a vertical: along the midline, from chin to forehead. */
export const UPWARDS: Direction = [0, 1];

/** The vertical through a point. */
export function verticalAt(point: Point<"mm">): Line<"mm"> {
  return { through: flatPoint(point[0], point[1]), direction: UPWARDS };
}

/** Where a line passes a height; nothing where it runs level. */
export function atHeight(
  { through, direction }: Line<"mm">,
  height: number,
): FlatPoint<"mm"> | undefined {
  const way = (height - through[1]) / direction[1];
  return Math.abs(direction[1]) < LEVEL
    ? undefined
    : pointOnLine({ through, direction }, length(way));
}

/** A line that rises by less than this share of its way is level but for rounding. */
const LEVEL = 1e-12;
