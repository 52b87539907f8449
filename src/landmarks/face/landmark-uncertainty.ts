import { type Length, mm, type Unit } from "../../units/index.js";
import type { Face } from "./face.js";
import type { LandmarkName } from "./landmarks.js";

/**
 * One placement by hand: repeatability of one rater's landmarks on photographs.
 *
 * Source: Reliability of Periocular Anthropometry, 2019, 46 adults (same rater 0.26 mm).
 */
export const BY_HAND: Length<"mm"> = mm(0.26);

/**
 * Standard uncertainty of a landmark's place, in each axis of the face, as its source states it;
 * 0.26 mm where the face does not name its source and so was placed by hand.
 *
 * @example
 * ```ts
 * import { landmarkUncertainty } from "brow-geometry/landmarks";
 * landmarkUncertainty({ right: {}, left: {}, midline: {} }, "endocanthion"); // → 0.26
 * ```
 */
export function landmarkUncertainty<U extends Unit>(
  face: Face<U>,
  landmark: LandmarkName,
): Length<"mm"> {
  const uncertainty = face.source?.uncertainty;
  return uncertainty?.landmarks?.[landmark] ?? uncertainty?.default ?? BY_HAND;
}
