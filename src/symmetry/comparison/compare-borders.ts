import { areaBetween, type Line, separation } from "../../geometry/index.js";
import type { Brow } from "../../landmarks/index.js";
import type { Length, Polyline, Sides } from "../../units/index.js";
import { refusingAs } from "../../units/internal.js";
import { FACE_MIDLINE, mirror } from "../mirroring/mirror.js";

/** How far one border runs from the mirror image of the other. */
export interface BorderDifference {
  /** Mean distance, by length. */
  readonly mean: Length<"mm">;
  /** Hausdorff distance: the greatest, wherever on the borders it is reached. */
  readonly greatest: Length<"mm">;
  /** Area between the two, in square millimetres. */
  readonly area: number;
}

/** How the borders of two brows differ. */
export interface BorderComparison {
  readonly upper: BorderDifference;
  /** Present where both lower borders are known. */
  readonly lower?: BorderDifference;
}

/**
 * Compares whole borders: each of the left brow with the mirror image of the right one's. Depth is
 * ignored: borders are compared as they are seen from the front.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points` for a border that is none
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { compareBorders } from "brow-geometry/symmetry";
 * const { upper } = compareBorders({
 *   right: { upper: mm([[-15, 20], [-38, 26], [-57, 18]]) },
 *   left: { upper: mm([[15, 21], [38, 27], [57, 19]]) },
 * });
 * upper; // → { mean: 0.95, greatest: 1.00, area: 42.00 }
 * ```
 */
export function compareBorders(
  { right, left }: Sides<Brow<"mm">>,
  across: Line<"mm"> = FACE_MIDLINE,
): BorderComparison {
  return refusingAs("compareBorders", () => {
    const image = mirror(right, across);
    const upper = differenceOf(left.upper, image.upper);
    if (left.lower === undefined || image.lower === undefined) return { upper };
    return { upper, lower: differenceOf(left.lower, image.lower) };
  });
}

function differenceOf(one: Polyline<"mm">, other: Polyline<"mm">): BorderDifference {
  return { ...separation(one, other), area: areaBetween(one, other) };
}
