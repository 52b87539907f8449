import { PLACED_DOTS } from "../../landmarks/internal.js";
import type { Side } from "../../units/index.js";
import { refuse, refusingAs, requireWord, SIDES } from "../../units/internal.js";
import type { Choices, Pin } from "../choices/choices.js";
import { standInOf } from "./is-hair.js";
import { readFace } from "./plan-dots.js";
import type { PlannableFace } from "./plannable-face.js";

/**
 * Choices that leave one brow as it grows and carry it over the midline of the face, dot for dot: a slanted
 * front, thickness and a tail that ends early are kept, whatever guides and rules of shape say. Findings about
 * its shape are told all the same.
 *
 * The dots are pins, as if the artist had set them where hair has them: dots that are pinned already stay
 * theirs. A brow too flat to have an arch gets one by the other choices.
 *
 * @param face in the face space: of a photo, `toFace(photo, frame)` or the `face` of a plan
 * @throws GeometryError as `planDots` for a face that cannot be planned; `out-of-range` for a word that is no
 * side; `inconsistent` where a detector's guess or what stands in for hair is all that is known of the brow
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace } from "brow-geometry";
 * import { followBrow } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: {
 *     upper: mm([[sign * 13, 20 + up], [sign * 38, 27 + up], [sign * 50, 23 + up], [sign * 57, 18 + up]]),
 *     lower: mm([[sign * 15, 13 + up], [sign * 38, 21 + up], [sign * 57, 18 + up]]),
 *   },
 * });
 * const face: PlannableFace = { right: side(-1, 0), left: side(1, 2), midline: {} };
 * const { dots } = planDots(face, followBrow(face, "right"));
 * dots.right.lowerStart; // → [-15, 13]
 * dots.left.lowerStart; // → [15, 13]
 * ```
 */
export function followBrow(face: PlannableFace, side: Side, choices: Choices = {}): Choices {
  return refusingAs("followBrow", () => {
    requireWord("side", side, SIDES);
    const { natural } = readFace(face);
    const guess = standInOf(face, side);
    if (guess !== undefined) {
      const need = "borders by hand or from the picture: a stand-in does not grow";
      refuse("inconsistent", `${side}.brow`, guess.instead, need);
    }
    const { pins = [] } = choices;
    const isPinned = (dot: Pin["dot"]): boolean =>
      pins.some((pin) => pin.side === side && pin.dot === dot);
    const grown = PLACED_DOTS.flatMap((dot): readonly Pin[] => {
      const at = natural[side].dots[dot];
      return at === undefined || isPinned(dot) ? [] : [{ side, dot, at }];
    });
    return { ...choices, lead: side, pins: [...pins, ...grown] };
  });
}
