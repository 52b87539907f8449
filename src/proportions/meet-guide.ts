import {
  distanceAlongLine,
  midpoint,
  polylineLength,
  type PolylinePlace,
} from "../geometry/index.js";
import { crossingsOf, endDirection } from "../geometry/internal.js";
import type { Brow } from "../landmarks/index.js";
import { flatPoint, type Length, length, type Point, type Polyline } from "../units/index.js";
import { refusingAs } from "../units/internal.js";
import { BORDER_END } from "./border-end.js";
import type { Guide } from "./guide-line.js";
import { verticalAt } from "./upwards.js";

/**
 * Where a guide meets a brow: on the upper border; a tail guide half-way between both borders, or on
 * the one that it meets. `along` is measured on the upper border, or on the only one met.
 *
 * A border that the guide misses is extended as its last 5 mm run, and the place is flagged. Where a tail
 * ends before its guide, both borders go on as one from the tip, half-way between their ends: each by itself
 * they would cross.
 * Undefined where the guide meets nothing above the landmark it rises from. Where a guide crosses a
 * border more than once, the crossing nearest the start counts, for a tail guide the one nearest
 * the tail.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points` where a border has no two
 * points that differ
 *
 * @example
 * ```ts
 * import { guideLine, mm } from "brow-geometry";
 * import { meetGuide } from "brow-geometry/proportions";
 * const face = { right: {}, left: { endocanthion: mm([15.9, 0]) }, midline: {} };
 * const brow = { upper: mm([[18, 20], [38, 26], [58, 18]]) };
 * meetGuide(guideLine(face, "left", "endocanthion-vertical"), brow);
 * // → { at: [15.9, 19.37], along: -2.19, extended: true }
 * ```
 */
export function meetGuide(guide: Guide, brow: Brow<"mm">): PolylinePlace<"mm"> | undefined {
  return refusingAs("meetGuide", () => meetSight(guide, brow));
}

/** What {@link meetGuide} finds, for any line that places a mark. */
export function meetSight(sight: Sight, brow: Brow<"mm">): PolylinePlace<"mm"> | undefined {
  const upper = meetBorder(sight, brow.upper);
  if (sight.mark !== "tail" || brow.lower === undefined) return upper;
  const lower = meetBorder(sight, brow.lower);
  if (upper === undefined || lower === undefined) return upper ?? lower;
  if (!upper.extended && !lower.extended) return half(upper, lower);
  if (upper.extended && lower.extended && upper.along > 0) {
    return pastTip(sight, brow.upper, brow.lower) ?? upper;
  }
  const crossed = distanceAlongLine(upper.at, sight.line) < distanceAlongLine(lower.at, sight.line);
  if (!crossed) return half(upper, lower);
  return upper.extended ? lower : upper;
}

/** How high the middle of a brow lies over a place, as a tail guide would meet it there. */
export function middleOver(x: Length<"mm">, brow: Brow<"mm">): Length<"mm"> | undefined {
  const line = verticalAt(flatPoint(x, BELOW_ALL));
  const place = meetSight({ mark: "tail", line }, brow);
  return place && length(place.at[1]);
}

/** Where a vertical begins that is to meet a brow wherever it lies, in mm. */
const BELOW_ALL = -1000;

/** A line that places a mark. */
type Sight = Pick<Guide, "mark" | "line">;

function half(upper: PolylinePlace<"mm">, lower: PolylinePlace<"mm">): PolylinePlace<"mm"> {
  const [x, y] = midpoint(upper.at, lower.at);
  return { at: flatPoint(x, y), along: upper.along, extended: upper.extended || lower.extended };
}

/** Where a guide meets a brow that goes on from its tip, half-way between the directions of its borders. */
function pastTip(
  sight: Sight,
  upper: Polyline<"mm">,
  lower: Polyline<"mm">,
): PolylinePlace<"mm"> | undefined {
  const [above, below] = [endDirection(upper, BORDER_END), endDirection(lower, BORDER_END)];
  if (above === undefined || below === undefined) return undefined;
  const [x, y] = midpoint(
    upper[upper.length - 1] as Point<"mm">,
    lower[lower.length - 1] as Point<"mm">,
  );
  const heading = flatPoint<"mm">(x + above[0] + below[0], y + above[1] + below[1]);
  const place = meetBorder(sight, [flatPoint(x, y), heading]);
  return place && { ...place, along: length(polylineLength(upper) + place.along), extended: true };
}

function meetBorder(
  { mark, line }: Sight,
  border: Polyline<"mm">,
): PolylinePlace<"mm"> | undefined {
  let met: PolylinePlace<"mm"> | undefined;
  for (const place of crossingsOf(line, border, BORDER_END)) {
    if (!(distanceAlongLine(place.at, line) > 0)) continue;
    if (mark !== "tail") return place;
    met = place;
  }
  return met;
}
