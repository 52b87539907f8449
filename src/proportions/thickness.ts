import { distanceAlongLine, type Direction, lineAlong } from "../geometry/index.js";
import { crossingsOf } from "../geometry/internal.js";
import type { Brow } from "../landmarks/index.js";
import { type FlatPoint, type Length, length, type Point, type Polyline } from "../units/index.js";
import { requirePolyline, refusingAs } from "../units/internal.js";
import { BORDER_END } from "./border-end.js";
import { UPWARDS } from "./upwards.js";

/** How a ruler is held across a brow: along the midline, or square to the upper border. */
export type ThicknessDirection = "vertical" | "normal";

/** Thickness of a brow at one place. */
export interface ThicknessReading {
  readonly value: Length<"mm">;
  /** Where the reading ends on the lower border. */
  readonly to: FlatPoint<"mm">;
  /** True where the lower border ends earlier and was extended along its end's tangent. */
  readonly extended: boolean;
}

/**
 * Thickness of a brow from a dot on its upper border to its lower border, as the frontal view shows
 * it. At a corner of the upper border `"normal"` reads along the bisector, as a ruler is held there.
 *
 * Undefined where the lower border is met nowhere below the dot, not even extended.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points` where a border has no two
 * points that differ
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { thickness } from "brow-geometry/proportions";
 * const brow = { upper: mm([[10, 20], [40, 30]]), lower: mm([[10, 12], [40, 22]]) };
 * thickness(mm([25, 25]), brow)?.value; // → 8.0000
 * thickness(mm([25, 25]), brow, "normal")?.value; // → 7.5895
 * ```
 */
export function thickness(
  at: Point<"mm">,
  brow: Required<Brow<"mm">>,
  direction: ThicknessDirection = "vertical",
): ThicknessReading | undefined {
  return refusingAs("thickness", () => {
    const up = direction === "vertical" ? UPWARDS : normalAt(at, brow.upper);
    const ruler = lineAlong(at, up);
    const readings = crossingsOf(ruler, brow.lower, BORDER_END).flatMap(({ at: to, extended }) => {
      const value = length<"mm">(-distanceAlongLine(to, ruler));
      return value >= 0 ? [{ value, to, extended }] : [];
    });
    return readings.reduce<ThicknessReading | undefined>(
      (nearest, reading) =>
        nearest === undefined || reading.value < nearest.value ? reading : nearest,
      undefined,
    );
  });
}

/** Upwards and square to a border where it is nearest to a point; at a corner along the bisector. */
function normalAt(at: Point<"mm">, border: Polyline<"mm">): Direction {
  requirePolyline("brow.upper", border, 2);
  let nearest = Number.POSITIVE_INFINITY;
  let tangent: Direction = [0, 0];
  for (let index = 1; index < border.length; index += 1) {
    const [from, to] = [border[index - 1] as Point<"mm">, border[index] as Point<"mm">];
    const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (size === 0) continue;
    const [x, y] = [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
    const along = (at[0] - from[0]) * x + (at[1] - from[1]) * y;
    const foot = Math.min(Math.max(along, 0), size);
    const apart = Math.hypot(from[0] + foot * x - at[0], from[1] + foot * y - at[1]);
    if (apart < nearest - SAME_PLACE) [nearest, tangent] = [apart, [x, y]];
    // Equally near to the segment before: a corner, whose bisector both tangents share.
    else if (apart <= nearest + SAME_PLACE) tangent = [tangent[0] + x, tangent[1] + y];
  }
  return tangent[0] < 0 ? [tangent[1], -tangent[0]] : [-tangent[1], tangent[0]];
}

/** Two feet nearer to each other than this are one, in mm. */
const SAME_PLACE = 1e-9;
