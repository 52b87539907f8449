import { flatPoint, type Length, type Polyline, type Unit } from "../../units/index.js";
import { distanceFromLine, type Line } from "../lines/line.js";
import { type Leg, legsOf, placeOnLeg, type PolylinePlace } from "./polyline.js";
import { advance, difference } from "../lines/vector.js";
import { endDirection } from "./end-direction.js";

/**
 * Where an endless line meets a polyline, in order from the polyline's first point.
 *
 * Only where nothing on the polyline itself is hit are its ends extended along their tangents, and
 * the nearest such hit is returned, flagged. The tangent of an end is that of its last leg, or, where that
 * is shorter than `stretch`, of a line fitted to so much of the way: freehand borders jitter. A stretch that lies on the line counts where it
 * begins. Empty where even the extensions miss.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points` as {@link pointAlong}
 *
 * @example
 * ```ts
 * import { intersectPolyline, lineAlong } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * const border = mm([[10, 20], [30, 26], [50, 18]]);
 * intersectPolyline(lineAlong(mm([20, 0]), [0, 1]), border); // → [{ at: [20, 23], extended: false }]
 * intersectPolyline(lineAlong(mm([55, 0]), [0, 1]), border); // → [{ at: [55, 16], extended: true }]
 * ```
 */
export function intersectPolyline<U extends Unit>(
  line: Line<U>,
  polyline: Polyline<U>,
  stretch: Length<U> | 0 = 0,
): readonly PolylinePlace<U>[] {
  const legs = legsOf("intersectPolyline", polyline);
  const ends = { first: legs[0] as Leg<U>, last: legs[legs.length - 1] as Leg<U> };
  const hits: PolylinePlace<U>[] = [];
  let offset = distanceFromLine(ends.first.from, line);
  let onLineBefore = false;
  for (const leg of legs) {
    const offsetAtEnd = distanceFromLine(leg.to, line);
    if (meets(offset, offsetAtEnd, leg === ends.last) && !(offset === 0 && onLineBefore)) {
      hits.push(placeOnLeg(leg, shareToLine(leg, line, offset), ends.last));
    }
    onLineBefore = offset === 0 && offsetAtEnd === 0;
    offset = offsetAtEnd;
  }
  return hits.length > 0 ? hits : beyondEnds(line, polyline, ends, stretch);
}

/** Whether a leg meets the line; a corner on the line belongs to the leg that begins there. */
function meets(offset: number, offsetAtEnd: number, isLast: boolean): boolean {
  if (offset === 0) return true;
  return offsetAtEnd === 0 ? isLast : offset > 0 !== offsetAtEnd > 0;
}

/** Which share of a leg, extended both ways, leads to the line; 0 where it lies on the line. */
function shareToLine<U extends Unit>({ from, to }: Leg<U>, line: Line<U>, offset: number): number {
  if (offset === 0) return 0;
  // From the leg itself: the offsets of its ends would lose a short leg's digits.
  const [x, y] = difference(to, from);
  return offset / (line.direction[1] * x - line.direction[0] * y);
}

function beyondEnds<U extends Unit>(
  line: Line<U>,
  polyline: Polyline<U>,
  ends: { readonly first: Leg<U>; readonly last: Leg<U> },
  stretch: Length<U> | 0,
): readonly PolylinePlace<U>[] {
  const last = endLeg(ends.last, polyline, stretch);
  const first = reversed(endLeg(reversed(ends.first), polyline.slice().reverse(), stretch));
  const before = shareToLine(first, line, distanceFromLine(first.from, line));
  const after = shareToLine(last, line, distanceFromLine(last.from, line));
  const [nearest] = [
    { leg: first, share: before, beyond: -before * first.size },
    { leg: last, share: after, beyond: (after - 1) * last.size },
  ]
    .filter(({ beyond }) => beyond > 0 && Number.isFinite(beyond))
    .sort((one, other) => one.beyond - other.beyond);
  return nearest === undefined ? [] : [placeOnLeg(nearest.leg, nearest.share, ends.last)];
}

/** The last leg, turned about its end to where a whole stretch heads if it is shorter than that. */
function endLeg<U extends Unit>(
  leg: Leg<U>,
  polyline: Polyline<U>,
  stretch: Length<U> | 0,
): Leg<U> {
  const direction = leg.size < stretch ? endDirection(polyline, stretch) : undefined;
  if (direction === undefined) return leg;
  const [x, y] = advance(leg.to, direction, -leg.size);
  return { ...leg, from: flatPoint(x, y) };
}

function reversed<U extends Unit>({ from, to, ...leg }: Leg<U>): Leg<U> {
  return { ...leg, from: to, to: from };
}
