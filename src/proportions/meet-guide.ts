import {
  distanceAlongLine,
  intersectPolyline,
  midpoint,
  type PolylinePlace,
} from "../geometry/index.js";
import type { Brow } from "../landmarks/index.js";
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
  return refusingAs("meetGuide", () => {
    const upper = meetBorder(guide, brow.upper);
    if (guide.mark !== "tail" || brow.lower === undefined) return upper;
    const lower = meetBorder(guide, brow.lower);
    if (upper === undefined || lower === undefined) return upper ?? lower;
    const [x, y] = midpoint(upper.at, lower.at);
    return { at: flatPoint(x, y), along: upper.along, extended: upper.extended || lower.extended };
  });
}

function meetBorder(guide: Guide, border: Polyline<"mm">): PolylinePlace<"mm"> | undefined {
  const places = intersectPolyline(guide.line, border).filter(
    ({ at }) => distanceAlongLine(at, guide.line) > 0,
  );
  return guide.mark === "tail" ? places.at(-1) : places[0];
}
