import { lineThrough } from "../geometry/index.js";
import type { Side } from "../units/index.js";
import { drawGuide } from "./draw-guide.js";
import type { FaceForGuide, Guide, TailConvention } from "./guide.js";

/**
 * The line on which a brow ends: from the nose wing through the outer corner of the eye.
 *
 * Source: Westmore 1974/75, as reported by Yalçınkaya et al., Eur Arch Otorhinolaryngol,
 * doi 10.1007/s00405-014-3356-0.
 *
 * @throws GeometryError `missing-landmark`; `coincident-points` where alare and exocanthion are one
 *
 * @example
 * ```ts
 * import { mm, tailGuide } from "brow-geometry";
 * const left = { alare: mm([15, -40]), exocanthion: mm([45, 0]) };
 * const face = { right: {}, left, midline: {} };
 * tailGuide(face, "left").line; // → { through: [15, -40], direction: [0.6, 0.8] }
 * ```
 */
export function tailGuide<Which extends Side>(
  face: FaceForGuide<TailConvention, Which>,
  side: Which,
  convention: TailConvention = "alare-through-exocanthion",
): Guide<TailConvention> {
  return drawGuide({ mark: "tail", convention, side }, face, lineThrough);
}
