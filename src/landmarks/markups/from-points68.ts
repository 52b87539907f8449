import type { Face } from "../face/face.js";
import type { MarkupOptions } from "./markup-options.js";
import type { MarkupPoints } from "./markup-points.js";
import { type NostrilAlare, POINTS_68 } from "./points68-markup.js";
import { faceFromMarkup } from "./read-markup.js";

/**
 * A face from the 68 points of the 300-W (iBUG) markup.
 *
 * The markup has no iris, no thickness of the brow and no depth; pupil and alare are stand-ins.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`, `image-size-needed`,
 * `inconsistent` where the unit of the coordinates is not the one named, `sides-swapped`
 *
 * @example
 * ```ts
 * import { fromPoints68, type MarkupPoints } from "brow-geometry";
 * const mapped = (landmarks: MarkupPoints) => fromPoints68(landmarks, { coordinates: "pixels" });
 * mapped([[415.9, 455.2]]); // throws GeometryError: landmarks.length is 1; needs 68 points
 * ```
 */
export function fromPoints68(
  landmarks: MarkupPoints,
  options: MarkupOptions<NostrilAlare>,
): Face<"px"> {
  return faceFromMarkup("fromPoints68", POINTS_68, landmarks, options);
}
