import { GeometryError } from "../../units/index.js";
import type { Face } from "../face/face.js";
import type { MarkupOptions } from "./markup-options.js";
import { lengthOf, type MarkupPoint, type MarkupPoints } from "./markup-points.js";
import { COCO_FACE, type NostrilAlare } from "./points68-markup.js";
import { faceFromMarkup } from "./read-markup.js";

/** All keypoints of a person, and where those of the face begin among them. */
const WHOLE_BODY = { size: 133, face: 23 };

/**
 * A face from COCO-WholeBody keypoints: all 133 of a person or the 68 of the face, as a flat list
 * x, y, visibility, x, y, visibility … A point at 0, 0 with visibility 0 is missing.
 *
 * The points are those of `fromPoints68`, with the same stand-ins.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`, `image-size-needed`,
 * `inconsistent` where the unit of the coordinates is not the one named, `sides-swapped`
 *
 * @example
 * ```ts
 * import { fromCocoWholeBody } from "brow-geometry";
 * const mapped = (keypoints: readonly number[]) =>
 *   fromCocoWholeBody(keypoints, { coordinates: "pixels" });
 * mapped([415.9, 455.2, 2]); // throws GeometryError: keypoints.length is 3; needs 204 or 399 numbers
 * ```
 */
export function fromCocoWholeBody(
  keypoints: readonly number[],
  options: MarkupOptions<NostrilAlare>,
): Face<"px"> {
  const { size } = COCO_FACE;
  const count = lengthOf(keypoints);
  const first = count === 3 * WHOLE_BODY.size ? WHOLE_BODY.face : 0;
  if (first === 0 && count !== 3 * size) {
    throw new GeometryError("wrong-count", {
      where: "fromCocoWholeBody",
      field: count === undefined ? "keypoints" : "keypoints.length",
      value: count,
      need: `${3 * size} or ${3 * WHOLE_BODY.size} numbers`,
    });
  }
  const landmarks: MarkupPoints = Array.from({ length: size }, (_, index): MarkupPoint => {
    const at = 3 * (first + index);
    return {
      x: keypoints[at] as number,
      y: keypoints[at + 1] as number,
      visibility: keypoints[at + 2],
    };
  });
  return faceFromMarkup("fromCocoWholeBody", COCO_FACE, landmarks, options);
}
