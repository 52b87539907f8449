import {
  flatPoint,
  type FlatPoint,
  type Length,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { requirePositive } from "../../units/internal.js";
import { legsOf } from "./polyline.js";
import { between } from "../lines/vector.js";

/**
 * A polyline over the same way with more points, none farther than `step` from the next; its own
 * points stay, repeated neighbours drop out.
 *
 * @throws GeometryError `out-of-range` where the step is not more than 0, and what
 * {@link pointAlong} throws
 *
 * @example
 * ```ts
 * import { densify } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * densify(mm([[0, 0], [10, 0], [10, 3]]), mm(4)); // → [[0, 0], [3.33, 0], [6.67, 0], [10, 0], [10, 3]]
 * ```
 */
export function densify<U extends Unit>(
  polyline: Polyline<U>,
  step: Length<U>,
): readonly FlatPoint<U>[] {
  requirePositive("densify", "step", step);
  const legs = legsOf("densify", polyline);
  const [first] = polyline;
  const points: FlatPoint<U>[] = first === undefined ? [] : [flatPoint(first[0], first[1])];
  for (const { from, to, size } of legs) {
    const pieces = Math.ceil(size / step);
    for (let piece = 1; piece <= pieces; piece += 1) {
      const [x, y] = between(from, to, piece / pieces);
      points.push(flatPoint(x, y));
    }
  }
  return points;
}
