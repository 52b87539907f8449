import type { Length, Point, Polyline, Unit } from "../../units/index.js";
import { distance } from "../lines/distance.js";
import type { Direction } from "../lines/line.js";

/**
 * Where a polyline heads past its last point, of length 1: the line through that point from which the
 * last stretch strays least, in squares over its way. The direction of the last leg where that is the
 * longer one. Points added on a leg change nothing. Undefined where no two points differ.
 */
export function endDirection<U extends Unit>(
  polyline: Polyline<U>,
  stretch: Length<U> | 0,
): Direction | undefined {
  const end = polyline[polyline.length - 1];
  if (end === undefined) return undefined;
  let [x, y, way] = [0, 0, 0];
  let from: Point<U> = end;
  for (let index = polyline.length - 2; index >= 0; index -= 1) {
    const to = polyline[index] as Point<U>;
    const size = distance(from, to);
    if (size === 0) continue;
    const part = way === 0 || size <= stretch - way ? 1 : (stretch - way) / size;
    const next = way + part * size;
    // The integral of the way times the points' distance from the end, along both axes.
    const [near, far] = [(2 * way + next) * part * size, (way + 2 * next) * part * size];
    const [offX, offY] = [from[0] - end[0], from[1] - end[1]];
    x -= near * offX + far * (offX + part * (to[0] - from[0]));
    y -= near * offY + far * (offY + part * (to[1] - from[1]));
    way = next;
    if (way >= stretch) break;
    from = to;
  }
  const size = Math.sqrt(x * x + y * y);
  return size === 0 ? undefined : [x / size, y / size];
}
