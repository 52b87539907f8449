import { lineAlong } from "../geometry/index.js";
import type { Side } from "../units/index.js";
import { drawGuide, UPWARDS } from "./draw-guide.js";
import type { FaceForGuide, Guide, StartConvention } from "./guide.js";

/**
 * The line on which a brow starts: parallel to the midline,
 *
 * - `"alare-vertical"` through the most lateral point of the nose wing (Westmore 1974/75, as
 *   reported by Yalçınkaya et al., Eur Arch Otorhinolaryngol, doi 10.1007/s00405-014-3356-0; Alex,
 *   Facial Plast Surg 2004;20:193);
 * - `"endocanthion-vertical"` through the inner corner of the eye (Westmore, as reported there): the
 *   one to use where the nose is wide or bent (trade practice, no source).
 *
 * @throws GeometryError `missing-landmark`
 *
 * @example
 * ```ts
 * import { mm, startGuide } from "brow-geometry";
 * const face = { right: {}, left: { endocanthion: mm([15.9, 0]) }, midline: {} };
 * startGuide(face, "left", "endocanthion-vertical").line; // → { through: [15.9, 0], direction: [0, 1] }
 * ```
 */
export function startGuide<Convention extends StartConvention, Which extends Side>(
  face: FaceForGuide<Convention, Which>,
  side: Which,
  convention: Convention,
): Guide<Convention> {
  return drawGuide({ mark: "start", convention, side }, face, (landmark) =>
    lineAlong(landmark, UPWARDS),
  );
}
