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
  let before: Extension | undefined;
  let after: Extension | undefined;
  let from = polyline[0];
  if (from === undefined) return undefined;
  let first = true;
  for (let index = 1; index < polyline.length; index += 1) {
    const to = polyline[index] as Point<U>;
    const [width, rise] = [to[0] - from[0], to[1] - from[1]];
    if (width !== 0 || rise !== 0) {
      const part = width === 0 ? (x === from[0] ? 0 : Number.NaN) : (x - from[0]) / width;
      const y = from[1] + part * rise;
      if (part >= 0 && part <= 1) return length(y);
      const size = Math.hypot(width, rise);
      if (first && part < 0) before = { y, beyond: -part * size };
      after = part > 1 ? { y, beyond: (part - 1) * size } : undefined;
      first = false;
    }
    from = to;
  }
  const nearer =
    after === undefined || (before?.beyond ?? after.beyond) < after.beyond ? before : after;
  return nearer && length(nearer.y);
}

interface Extension {
  readonly y: number;
  readonly beyond: number;
}
