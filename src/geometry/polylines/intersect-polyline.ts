import {
  type FlatPoint,
  flatPoint,
  type Length,
  length,
  type Point,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { refusingAs, refuse, requirePolyline } from "../../units/internal.js";
import { distance } from "../lines/distance.js";
import { type Direction, distanceFromLine, type Line } from "../lines/line.js";
import { type PolylinePlace } from "./polyline.js";
import { advance } from "../lines/vector.js";
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
  return refusingAs("intersectPolyline", () => crossingsOf(line, polyline, stretch));
}

/** The crossings of a line, asked for by another function, hundreds of times for a plan. */
export function crossingsOf<U extends Unit>(
  line: Line<U>,
  polyline: Polyline<U>,
  stretch: Length<U> | 0,
): readonly PolylinePlace<U>[] {
  requirePolyline("polyline", polyline, 2);
  let hits: readonly PolylinePlace<U>[] = [];
  let from = polyline[0] as Point<U>;
  let offset = distanceFromLine(from, line);
  let onLineBefore = false;
  let way = 0;
  let last = polyline.length - 1;
  while (last > 0 && isSame(polyline[last - 1] as Point<U>, polyline[last] as Point<U>)) last -= 1;
  // Without legs of its own: each would be an object.
  for (let index = 1; index < polyline.length; index += 1) {
    const to = polyline[index] as Point<U>;
    if (isSame(from, to)) continue;
    const size = distance(from, to);
    const offsetAtEnd = distanceFromLine(to, line);
    if (meets(offset, offsetAtEnd, index === last) && !(offset === 0 && onLineBefore)) {
      // From the leg itself: the offsets of its ends would lose a short leg's digits.
      const x = to[0] - from[0];
      const y = to[1] - from[1];
      const share = offset === 0 ? 0 : offset / turnBetween(x, y, line);
      const at = flatPoint<U>(from[0] + share * x, from[1] + share * y);
      hits = [...hits, { at, along: length(way + share * size), extended: false }];
    }
    onLineBefore = offset === 0 && offsetAtEnd === 0;
    from = to;
    offset = offsetAtEnd;
    way += size;
  }
  if (way === 0) {
    refuse("coincident-points", "polyline", polyline, "another point");
  }
  return hits.length > 0 ? hits : beyondEnds(line, polyline, stretch, way);
}

function isSame<U extends Unit>(one: Point<U>, other: Point<U>): boolean {
  return one[0] === other[0] && one[1] === other[1];
}

/** Whether a leg meets the line; a corner on the line belongs to the leg that begins there. */
function meets(offset: number, offsetAtEnd: number, isLast: boolean): boolean {
  if (offset === 0) return true;
  return offsetAtEnd === 0 ? isLast : offset > 0 !== offsetAtEnd > 0;
}

/** How fast a way leaves a line, to the other side than distances from the line count. */
function turnBetween<U extends Unit>(x: number, y: number, { direction }: Line<U>): number {
  return direction[1] * x - direction[0] * y;
}

/** Where a line meets what goes on from the nearer end of a polyline that is so long; nothing where both miss. */
export function beyondEnds<U extends Unit>(
  line: Line<U>,
  polyline: Polyline<U>,
  stretch: Length<U> | 0,
  way: number,
): readonly PolylinePlace<U>[] {
  const before = beyond(line, polyline.slice().reverse(), stretch);
  const after = beyond(line, polyline, stretch);
  const nearer = after === undefined || (before && before.by < after.by) ? before : after;
  if (nearer === undefined) return [];
  const { at, by } = nearer;
  const along = length<U>(nearer === before ? -by : way + by);
  return [{ at, along, extended: by > ROUNDING * way }];
}

/** Where a line meets what goes on from a polyline's last point, and how far beyond it. */
function beyond<U extends Unit>(
  line: Line<U>,
  polyline: Polyline<U>,
  stretch: Length<U> | 0,
): { readonly at: FlatPoint<U>; readonly by: number } | undefined {
  const end = polyline[polyline.length - 1] as Point<U>;
  const heading = endDirection(polyline, stretch) ?? NOWHERE;
  const by = distanceFromLine(end, line) / turnBetween(heading[0], heading[1], line);
  if (!(by > 0 && Number.isFinite(by))) return undefined;
  const [x, y] = advance(end, heading, by);
  return { at: flatPoint(x, y), by };
}

const NOWHERE: Direction = [0, 0];

/** A polyline's own length, summed up, may round past its last point. */
const ROUNDING = 1e-12;
