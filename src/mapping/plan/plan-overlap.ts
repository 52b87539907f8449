import {
  naturalOutline,
  outline,
  type OutlineOverlap,
  overlapOutlines,
} from "../../proportions/index.js";
import { eachSide, type Sides } from "../../units/index.js";
import { refusingAs } from "../../units/internal.js";
import { isHair } from "../dots/is-hair.js";
import type { PlannedDots } from "../dots/planned-dots.js";

/**
 * How the planned brows lie over the natural ones, by area: what is shared, hair to be removed, skin to
 * be filled. Left out for a side whose natural lower border is not known, or whose brow is a detector's guess.
 *
 * @throws GeometryError as {@link outline} and `naturalOutline`
 *
 * @example
 * ```ts
 * import { mm, planDots, planOverlap, type PlannableFace } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: {
 *     upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]),
 *     lower: mm([[sign * 17, 13], [sign * 38, 21], [sign * 57, 18]]),
 *   },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const { left } = planOverlap(planDots(face));
 * left?.hairOutside; // → 24.5
 * left?.skinInside; // → 37.1
 * ```
 */
export function planOverlap({
  face,
  dots,
  choices,
}: Pick<PlannedDots, "face" | "dots" | "choices">): Sides<OutlineOverlap | undefined> {
  return refusingAs("planOverlap", () =>
    eachSide((side) => {
      const { upper, lower } = face[side].brow;
      if (lower === undefined || !isHair(face, side)) return undefined;
      return overlapOutlines(outline(dots[side], choices.shape), naturalOutline({ upper, lower }));
    }),
  );
}
