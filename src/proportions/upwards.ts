import type { Direction, Line } from "../geometry/index.js";
import { flatPoint, type Point } from "../units/index.js";

/** The direction of a vertical: along the midline, from chin to forehead. */
export const UPWARDS: Direction = [0, 1];

/** The vertical through a point. */
export function verticalAt(point: Point<"mm">): Line<"mm"> {
  return { through: flatPoint(point[0], point[1]), direction: UPWARDS };
}
