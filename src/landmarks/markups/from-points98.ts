import type { Face } from "../face/face.js";
import type { MarkupOptions } from "./markup-options.js";
import type { MarkupPoints } from "./markup-points.js";
import { type NoseBaseAlare, POINTS_98 } from "./points98-markup.js";
import { faceFromMarkup } from "./read-markup.js";

/**
 * A face from the 98 points of the WFLW markup.
 *
 * The markup has both borders of the brow and the pupil, no limbus, no glabella and no depth.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`, `image-size-needed`,
 * `inconsistent` where the unit of the coordinates is not the one named, `sides-swapped`
 *
 * @example
 * ```ts
 * import { fromPoints98, type MarkupPoints } from "brow-geometry";
 * const mapped = (landmarks: MarkupPoints) => fromPoints98(landmarks, { coordinates: "pixels" });
 * mapped([[415.9, 455.2]]); // throws GeometryError: landmarks.length is 1; needs 98 points
 * ```
 */
export function fromPoints98(
  landmarks: MarkupPoints,
  options: MarkupOptions<NoseBaseAlare>,
): Face<"px"> {
  return faceFromMarkup("fromPoints98", POINTS_98, landmarks, options);
}
