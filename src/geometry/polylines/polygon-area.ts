import type { Polyline, Unit } from "../../units/index.js";

/**
 * Signed area of the polygon through points, closed from the last to the first, in square units:
 * positive where it is run through from the x axis towards the y axis (counter-clockwise in the
 * face space, clockwise in the photo).
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { polygonArea } from "brow-geometry/geometry";
 * polygonArea(mm([[0, 0], [4, 0], [4, 3]])); // → 6
 * polygonArea(mm([[0, 0], [4, 3], [4, 0]])); // → -6
 * ```
 */
export function polygonArea<U extends Unit>(points: Polyline<U>): number {
  const [originX, originY] = points[0] ?? [0, 0];
  let twice = 0;
  let [beforeX, beforeY] = [0, 0];
  for (const point of points) {
    const [x, y] = [point[0] - originX, point[1] - originY];
    twice += beforeX * y - beforeY * x;
    [beforeX, beforeY] = [x, y];
  }
  return twice / 2;
}
