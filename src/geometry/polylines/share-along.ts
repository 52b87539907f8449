import type { Point, Polyline, Unit } from "../../units/index.js";
import { type Leg, legsOf } from "./polyline.js";

/**
 * How far along a polyline its place nearest to a point lies, as a share of its length from 0 to 1; the
 * first of several that are as near.
 *
 * @throws GeometryError as `polylineLength`
 */
export function shareAlong<U extends Unit>(polyline: Polyline<U>, [x, y]: Point<U>): number {
  const legs = legsOf(polyline);
  const last = legs[legs.length - 1] as Leg<U>;
  let [least, along] = [Number.POSITIVE_INFINITY, 0];
  for (const { from, to, size, before } of legs) {
    const [legX, legY] = [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
    const foot = Math.min(Math.max((x - from[0]) * legX + (y - from[1]) * legY, 0), size);
    const apart = Math.hypot(from[0] + foot * legX - x, from[1] + foot * legY - y);
    if (apart < least) [least, along] = [apart, before + foot];
  }
  return along / (last.before + last.size);
}
