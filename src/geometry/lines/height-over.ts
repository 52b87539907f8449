import { type Length, length, type Point, type Polyline, type Unit } from "../../units/index.js";

/**
 * The y of a polyline over an x: where the vertical through x meets it first; past its ends, on the
 * nearer end's tangent. Undefined where the vertical meets nothing, or no two points differ.
 *
 * What {@link intersectPolyline} returns for a vertical, for measures that are read very often:
 * points are taken as finite.
 */
export function heightOver<U extends Unit>(
  x: Length<U>,
  polyline: Polyline<U>,
): Length<U> | undefined {
  let from = polyline[0];
  if (from === undefined) return undefined;
  // The legs, by their ends, on whose extension the vertical may meet the line; 0 is none.
  let [first, before, after] = [true, 0, 0];
  for (let index = 1; index < polyline.length; index += 1) {
    const to = polyline[index] as Point<U>;
    const part = partOf(x, from, to);
    if (part >= 0 && part <= 1) return length(from[1] + part * (to[1] - from[1]));
    if (from[0] !== to[0] || from[1] !== to[1]) {
      if (first && part < 0) before = index;
      after = part > 1 ? index : 0;
      first = false;
    }
    from = to;
  }
  const [inner, outer] = [extended(x, polyline, before), extended(x, polyline, after)];
  const nearer = (inner?.beyond ?? Infinity) < (outer?.beyond ?? Infinity) ? inner : outer;
  return nearer && length(nearer.y);
}

/** Which share of a leg leads to an x; NaN where no share does, or where the leg has no length. */
function partOf<U extends Unit>(x: number, from: Point<U>, to: Point<U>): number {
  const width = to[0] - from[0];
  if (width !== 0) return (x - from[0]) / width;
  return x === from[0] && to[1] !== from[1] ? 0 : Number.NaN;
}

function extended<U extends Unit>(
  x: number,
  polyline: Polyline<U>,
  index: number,
): { readonly y: number; readonly beyond: number } | undefined {
  const [from, to] = [polyline[index - 1], polyline[index]];
  if (from === undefined || to === undefined) return undefined;
  const [width, rise] = [to[0] - from[0], to[1] - from[1]];
  const part = partOf(x, from, to);
  const beyond = Math.max(-part, part - 1) * Math.hypot(width, rise);
  return { y: from[1] + part * rise, beyond };
}
