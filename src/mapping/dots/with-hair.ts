import { type Brow, type Face, type FaceSide } from "../../landmarks/index.js";
import { BY_HAND } from "../../landmarks/internal.js";
import { eachSide, type Length, type Side, type Unit } from "../../units/index.js";
import { requirePositive, refusingAs } from "../../units/internal.js";
import { browsFrom } from "./brows-from.js";

/**
 * A detector's face with the borders of its hair, drawn by hand or taken from the picture, instead of what the
 * detector guessed: hair then counts in a plan. A side that is left out has no brow: see `withoutHair`.
 *
 * @param u standard uncertainty of the borders in each axis of the face; 0.26 mm where nothing is said, as of one
 * rater placing points by hand (Reliability of Periocular Anthropometry, 2019, 46 adults)
 * @throws GeometryError `not-finite`, `out-of-range` where the uncertainty is not positive
 *
 * @example
 * ```ts
 * import { mm, planBrows, type PlannableFace, requirePlannable } from "brow-geometry";
 * import { withHair } from "brow-geometry/mapping";
 * const brow = (sign: 1 | -1) => ({ upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) });
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: brow(sign),
 * });
 * const standIns = [{ landmark: "brow", instead: "brow-template" }] as const;
 * const guessed: PlannableFace = { right: side(-1), left: side(1), midline: {}, standIns };
 * const drawn = withHair(guessed, { right: brow(-1), left: brow(1) });
 * planBrows(guessed).moves[0]?.kind; // → "place"
 * planBrows(requirePlannable(drawn)).moves[0]?.kind; // → "stay"
 * ```
 */
export function withHair<U extends Unit>(
  face: Face<U>,
  brows: { readonly [On in Side]?: Brow<U> },
  u: Length<"mm"> = BY_HAND,
): Face<U> {
  return refusingAs("withHair", () => {
    requirePositive("u", u);
    const sides = eachSide((on): FaceSide<U> => {
      const { brow: _, ...side } = face[on];
      const brow = brows[on];
      return brow === undefined ? side : { ...side, brow };
    });
    return browsFrom({ ...face, ...sides }, u, []);
  });
}
