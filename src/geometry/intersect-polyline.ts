import { length, type Polyline, type Unit } from "../units/index.js";
import { distanceFromLine, type Line } from "./line.js";
import { directedSegments, type Leg, type PolylinePlace, pointAlong } from "./polyline.js";

/**
 * Where an endless line meets a polyline, in order from the polyline's first point.
 *
 * Hits on the polyline itself come alone; only where there is none are its ends extended along
 * their tangents, and the nearest such hit is returned, flagged. A stretch that lies on the line
 * counts where it begins. Empty where even the extensions miss.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points` as {@link pointAlong}
 *
 * @example
 * ```ts
 * import { intersectPolyline, lineAlong, mm } from "brow-geometry";
 * const border = mm([[10, 20], [30, 26], [50, 18]]);
 * intersectPolyline(lineAlong(mm([20, 0]), [0, 1]), border); // → [{ at: [20, 23], extended: false }]
 * intersectPolyline(lineAlong(mm([55, 0]), [0, 1]), border); // → [{ at: [55, 16], extended: true }]
 * ```
 */
export function intersectPolyline<U extends Unit>(
  line: Line<U>,
  polyline: Polyline<U>,
): readonly PolylinePlace<U>[] {
  const legs = directedSegments("intersectPolyline", polyline);
  const within = legs.flatMap((leg) => {
    const along = crossingAlong(leg, line);
    return along !== undefined && along >= 0 && along <= leg.size ? [leg.from + along] : [];
  });
  const hits = within.length > 0 ? withoutRepeats(within) : beyondEnds(legs, line);
  return hits.map((along) => pointAlong(polyline, length(along)));
}

/** Distance from a leg's start, along its direction, to the line; none where they are parallel. */
function crossingAlong<U extends Unit>(leg: Leg<U>, line: Line<U>): number | undefined {
  const offset = distanceFromLine(leg.start, line);
  const rate = line.direction[0] * leg.direction[1] - line.direction[1] * leg.direction[0];
  if (rate === 0) return offset === 0 ? 0 : undefined;
  return -offset / rate;
}

function beyondEnds<U extends Unit>(legs: readonly Leg<U>[], line: Line<U>): readonly number[] {
  const first = legs[0] as Leg<U>;
  const last = legs[legs.length - 1] as Leg<U>;
  const before = crossingAlong(first, line);
  const after = crossingAlong(last, line);
  const misses = [
    ...(before !== undefined && before < 0 ? [{ along: before, beyond: -before }] : []),
    ...(after !== undefined && after > last.size
      ? [{ along: last.from + after, beyond: after - last.size }]
      : []),
  ];
  const nearest = misses.sort((one, other) => one.beyond - other.beyond)[0];
  return nearest === undefined ? [] : [nearest.along];
}

/** A line through a corner meets both legs there: once is enough. */
function withoutRepeats(sorted: readonly number[]): readonly number[] {
  return sorted.filter((along, index) => {
    const previous = sorted[index - 1];
    return previous === undefined || along - previous > CORNER * Math.max(1, along);
  });
}

/** Hits closer than this share of their distance along the polyline are the same corner. */
const CORNER = 1e-12;
