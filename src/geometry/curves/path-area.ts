import type { Point, Unit } from "../../units/index.js";
import type { Cubic } from "./cubic.js";

/**
 * Signed area within a closed path of cubics, exact, in square units: positive where it is run
 * through from the x axis towards the y axis (counter-clockwise in the face space).
 *
 * From ½∮(x dy − y dx), whose integrals over a cubic's terms are whole twentieths.
 */
export function pathArea<U extends Unit>(path: readonly Cubic<U>[]): number {
  const origin = path[0]?.[0];
  if (origin === undefined) return 0;
  const cross = (one: Point<U>, other: Point<U>): number =>
    (one[0] - origin[0]) * (other[1] - origin[1]) - (other[0] - origin[0]) * (one[1] - origin[1]);
  return path.reduce(
    (sum, [from, leaving, arriving, to]) =>
      sum +
      (6 * cross(from, leaving) +
        3 * cross(from, arriving) +
        cross(from, to) +
        3 * cross(leaving, arriving) +
        3 * cross(leaving, to) +
        6 * cross(arriving, to)) /
        20,
    0,
  );
}
