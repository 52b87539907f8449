import type { Dot } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import type { BrowPlan } from "../../mapping/index.js";
import { toFace } from "../../symmetry/index.js";
import { type FlatPoint, mm, px, type Side } from "../../units/index.js";
import { refusingAs, requirePositive, requireFinitePoint, SIDES } from "../../units/internal.js";
import { planView } from "../canvas/view.js";

/** A dot that a finger or a pen means. */
export interface NearestDot {
  readonly side: Side;
  readonly dot: Dot;
}

/**
 * The dot nearest to a place in the picture of a plan, within reach: what a touch means, where dots lie closer
 * together than a finger is wide.
 *
 * @param spot in the coordinates of the picture, as `drawPlan` draws it
 * @param reach in the same: for touches at least 22 CSS pixels as they are shown
 * @throws GeometryError `not-finite`, `out-of-range` for a reach that is not positive
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { nearestDot, placeUnder } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * // A plan without a photo is drawn in millimetres, y downwards.
 * nearestDot(plan, [39, -25], 4); // → { side: "left", dot: "upperArch" }
 * nearestDot(plan, [0, -25], 4); // → undefined
 * placeUnder(plan, [39, -25]); // → [39, 25]
 * ```
 */
export function nearestDot(
  plan: BrowPlan,
  spot: readonly [x: number, y: number],
  reach: number,
): NearestDot | undefined {
  return refusingAs("nearestDot", () => {
    requirePositive("reach", reach);
    requireFinitePoint("spot", px(spot));
    const { place } = planView(plan);
    const dots = SIDES.flatMap((side) =>
      DOT_NAMES.map((dot) => {
        const [x, y] = place(plan.dots[side][dot]);
        return { side, dot, away: Math.hypot(x - spot[0], y - spot[1]) };
      }),
    );
    const { away, ...nearest } = dots.reduce((one, other) => (other.away < one.away ? other : one));
    return away <= reach ? nearest : undefined;
  });
}

/**
 * The place on the face, in mm, under a place in the picture of a plan: where a pin goes that somebody drags there.
 * The way back from how {@link nearestDot} looks at a picture.
 *
 * @throws GeometryError `not-finite`
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { placeUnder } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * placeUnder(plan, [-40, -26.5]); // → [-40, 26.5]
 * ```
 */
export function placeUnder(
  { frame }: BrowPlan,
  [x, y]: readonly [x: number, y: number],
): FlatPoint<"mm"> {
  return refusingAs("placeUnder", () => {
    requireFinitePoint("spot", px([x, y]));
    return frame === undefined ? mm([x, 0 - y]) : toFace(px([x, y]), frame);
  });
}
