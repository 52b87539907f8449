import { distance } from "../geometry/index.js";
import { BY_HAND } from "../landmarks/internal.js";
import { type Length, measured, type Point, type Scale } from "../units/index.js";
import {
  refusingAs,
  requireFinitePoint,
  requireNames,
  requirePositive,
} from "../units/internal.js";
import { requireBaseline } from "./baseline.js";
import { type ReferenceOptions, scaleOfKnown } from "./reference-depth.js";

/**
 * The scale of a photo from two points a known length apart: a stretch of a ruler, a strip of tape.
 *
 * The reference is taken to face the camera and to lie in the plane of what is measured, unless its
 * depth says otherwise: then what is read is divided by 1 − nearer/distance.
 *
 * @throws GeometryError `not-finite`, `out-of-range` where the length or the depth is impossible,
 * `ill-conditioned` where the ends are less than five uncertainties of their distance apart
 *
 * @example
 * ```ts
 * import { mm, px, scaleFromReference } from "brow-geometry";
 * const scale = scaleFromReference(px([812, 300]), px([1212, 300]), mm(50), { placement: px(2) });
 * scale.factor; // → 0.125
 * scale.u; // → 0.0009
 * ```
 */
export function scaleFromReference(
  from: Point<"px">,
  to: Point<"px">,
  length: Length<"mm">,
  options: ReferenceOptions = {},
): Scale {
  return refusingAs("scaleFromReference", () => {
    requireNames("options", options, ["u", "placement", "depth"]);
    requireFinitePoint("from", from);
    requireFinitePoint("to", to);
    requirePositive("length", length);
    const known = measured<number>(length, options.u ?? 0);
    const width = distance(from, to);
    const seenU = Math.SQRT2 * (options.placement ?? (BY_HAND * width) / length);
    const seen = measured<number>(width, seenU);
    requireBaseline("to", to, seen);
    return scaleOfKnown("reference", known, seen, options.depth);
  });
}
