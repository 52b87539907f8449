import { type FlatPoint, type Length, length, type Unit } from "../../units/index.js";
import { distanceFromLine, type Line, pointOnLine } from "./line.js";
import { difference } from "./vector.js";

/** How two endless lines meet: in one point, nowhere, or everywhere. */
export type LineMeeting<U extends Unit> =
  | { readonly kind: "crossing"; readonly at: FlatPoint<U> }
  | { readonly kind: "parallel"; readonly apart: Length<U> }
  | { readonly kind: "coincident" };

/**
 * What rounding may do to a sine, or to a distance as a share of the coordinates: below it two
 * directions count as parallel, and two parallel lines as one.
 */
const ROUNDING = 1e-12;

/**
 * Where two endless lines meet. Parallel and coincident lines are ordinary answers.
 *
 * @example
 * ```ts
 * import { intersect, lineThrough } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * const level = lineThrough(mm([0, 12]), mm([1, 12]));
 * const tailGuide = lineThrough(mm([15.7, -38]), mm([43.9, 0]));
 * intersect(level, tailGuide); // → { kind: "crossing", at: [52.81, 12.00] }
 * ```
 */
export function intersect<U extends Unit>(one: Line<U>, other: Line<U>): LineMeeting<U> {
  const sine = one.direction[0] * other.direction[1] - one.direction[1] * other.direction[0];
  if (Math.abs(sine) < ROUNDING) {
    const apart = Math.abs(distanceFromLine(other.through, one));
    const reach = Math.hypot(...one.through, ...other.through);
    return apart <= ROUNDING * reach
      ? { kind: "coincident" }
      : { kind: "parallel", apart: length(apart) };
  }
  const [x, y] = difference(other.through, one.through);
  const along = (x * other.direction[1] - y * other.direction[0]) / sine;
  return { kind: "crossing", at: pointOnLine(one, length(along)) };
}
