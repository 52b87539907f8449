import {
  distanceAlongLine,
  intersectPolyline,
  type Line,
  midpoint,
  type PolylinePlace,
} from "../geometry/index.js";
import type { Brow, Mark } from "../landmarks/index.js";
import { flatPoint, type Polyline } from "../units/index.js";
import { refusingAs } from "../units/internal.js";
import type { Guide } from "./guide-line.js";

/**
 * Where a guide meets a brow: on the upper border; a tail guide half-way between both borders, or on
 * the one that it meets. `along` is measured on the upper border, or on the only one met.
 *
 * A border that the guide misses is extended along its end's tangent, and the place is flagged.
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
export function meetSight(
  { mark, line }: Pick<Guide, "mark" | "line">,
  brow: Brow<"mm">,
): PolylinePlace<"mm"> | undefined {
  const upper = meetBorder(mark, line, brow.upper);
  if (mark !== "tail" || brow.lower === undefined) return upper;
  const lower = meetBorder(mark, line, brow.lower);
  if (upper === undefined || lower === undefined) return upper ?? lower;
  const [x, y] = midpoint(upper.at, lower.at);
  return { at: flatPoint(x, y), along: upper.along, extended: upper.extended || lower.extended };
}

function meetBorder(
  mark: Mark,
  line: Line<"mm">,
  border: Polyline<"mm">,
): PolylinePlace<"mm"> | undefined {
  const places = intersectPolyline(line, border).filter(
    ({ at }) => distanceAlongLine(at, line) > 0,
  );
  return mark === "tail" ? places.at(-1) : places[0];
}
