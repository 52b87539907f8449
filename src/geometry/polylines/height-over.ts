import {
  flatPoint,
  type Length,
  length,
  type Point,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import type { Line } from "../lines/line.js";
import { beyondEnds } from "./intersect-polyline.js";

/**
 * The y of a polyline over an x: where the vertical through x meets it first; past its ends, on the
 * nearer end's direction over a stretch. Undefined where the vertical meets nothing, or no two points
 * differ.
 *
 * What {@link intersectPolyline} returns for a vertical, for measures that are read very often:
 * points are taken as finite.
 */
export function heightOver<U extends Unit>(
  x: Length<U>,
  polyline: Polyline<U>,
  stretch: Length<U> | 0 = 0,
): Length<U> | undefined {
  let from = polyline[0];
  if (from === undefined) return undefined;
  for (let index = 1; index < polyline.length; index += 1) {
    const to = polyline[index] as Point<U>;
    const width = to[0] - from[0];
    if (width !== 0 || to[1] !== from[1]) {
      const part = width === 0 ? (x === from[0] ? 0 : Number.NaN) : (x - from[0]) / width;
      if (part >= 0 && part <= 1) return length(from[1] + part * (to[1] - from[1]));
    }
    from = to;
  }
  const upright: Line<U> = { through: flatPoint(x, 0), direction: [0, 1] };
  const [beyond] = beyondEnds(upright, polyline, stretch, 0);
  return beyond && length(beyond.at[1]);
}
