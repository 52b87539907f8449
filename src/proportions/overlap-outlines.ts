import { pathOverlap } from "../geometry/internal.js";
import { type Length, mm } from "../units/index.js";
import { refusingAs } from "../units/internal.js";
import { outlineArea, outlinePath } from "./outline-path.js";
import type { Outline } from "./outline.js";

/** How a planned brow lies over the natural one, in square millimetres of the frontal view. */
export interface OutlineOverlap {
  readonly shared: number;
  /** Natural hair outside the plan: to be removed. */
  readonly hairOutside: number;
  /** Bare skin inside the plan: to be filled. */
  readonly skinInside: number;
}

/**
 * Compares a planned outline with the natural one by area: exactly where each lies between two borders
 * that are graphs over x, as brows do. Where one turns back, such as a bulging front edge, its curves
 * are read as polylines that stray from them by no more than `error`, 0.001 mm where nothing else is
 * said, which leaves the areas of a brow right to about 0.1 mm².
 *
 * @throws GeometryError `not-finite`, `out-of-range` where the error is not positive
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { naturalOutline, overlapOutlines } from "brow-geometry/proportions";
 * const brow = { upper: mm([[15, 20], [60, 20]]), lower: mm([[15, 12], [60, 16]]) };
 * const moved = { upper: mm([[15, 21], [60, 21]]), lower: mm([[15, 13], [60, 17]]) };
 * overlapOutlines(naturalOutline(moved), naturalOutline(brow));
 * // → { shared: 225.000, hairOutside: 45.000, skinInside: 45.000 }
 * ```
 */
export function overlapOutlines(
  planned: Outline<"mm">,
  natural: Outline<"mm">,
  error: Length<"mm"> = mm(0.001),
): OutlineOverlap {
  return refusingAs("overlapOutlines", () => {
    const shared = pathOverlap(outlinePath(planned), outlinePath(natural), error);
    return {
      shared,
      hairOutside: outlineArea(natural) - shared,
      skinInside: outlineArea(planned) - shared,
    };
  });
}
