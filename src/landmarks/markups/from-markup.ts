import type { Face } from "../face/face.js";
import { refuse, refusingAs } from "../../units/internal.js";
import { faceFromPoints } from "./face-from-points.js";
import type { MarkupOptions } from "./markup-options.js";
import {
  INDEX_TABLES,
  type LandmarkForms,
  MARKUP_NAMES,
  type MarkupLandmarks,
  type MarkupName,
  type MarkupPoint,
  type MarkupPoints,
  MARKUPS,
  requireMarkup,
} from "./markups.js";

/**
 * A face from the points of a named markup: what a detector answered, or what a data set holds.
 *
 * The name has to fit the number of points: the face mesh is `"mesh-478"` with its irises and
 * `"mesh-468"` without. Depth comes from z, which counts in the unit of x and is smaller for nearer.
 * `"coco-wholebody-face"` takes a flat list x, y, visibility, x, y, visibility …, of all 133 keypoints
 * of a person or of the 68 of the face. A point at 0, 0 with visibility 0 is missing.
 *
 * Some landmarks are stand-ins, alare in every markup: see `standIns` and {@link describeMarkup}.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`, `image-size-needed`,
 * `inconsistent` where the unit of the coordinates is not the one named, `sides-swapped`
 *
 * @example
 * ```ts
 * import { fromMarkup } from "brow-geometry";
 * import { type MarkupPoints } from "brow-geometry/landmarks";
 * const mapped = (landmarks: MarkupPoints) =>
 *   fromMarkup("mesh-478", landmarks, {
 *     coordinates: "normalised",
 *     image: { width: 1920, height: 1280 },
 *     alare: "wing-base",
 *   });
 * mapped([]); // throws GeometryError: landmarks.length is 0; needs 478 points
 * ```
 */
export function fromMarkup<Name extends MarkupName>(
  name: Name,
  landmarks: MarkupLandmarks<Name>,
  options: MarkupOptions<Name>,
): Face<"px"> {
  return refusingAs("fromMarkup", () => {
    requireMarkup(name);
    const points = READERS[MARKUPS[name].form](name, landmarks as never);
    return faceFromPoints(name, INDEX_TABLES[name], points, options);
  });
}

/** The points of a markup, from each form in which they come. */
const READERS: {
  readonly [Form in keyof LandmarkForms]: (
    name: MarkupName,
    landmarks: LandmarkForms[Form],
  ) => MarkupPoints;
} = {
  points: pointsInOrder,
  keypoints: (name, keypoints) => pointsOfKeypoints(keypoints, MARKUPS[name].size),
};

/** Points in the order of their markup, which has to have as many. */
function pointsInOrder(name: MarkupName, landmarks: MarkupPoints): MarkupPoints {
  const { size } = MARKUPS[name];
  // Where a detector found no face, there is no list.
  const count = (landmarks as MarkupPoints | null | undefined)?.length;
  if (count === size && Array.isArray(landmarks)) return landmarks as MarkupPoints;
  const others = MARKUP_NAMES.filter(
    (other) => MARKUPS[other].form === "points" && MARKUPS[other].size === count,
  );
  const hint = others.length === 0 ? "" : `, or the name ${others.join(" or ")}`;
  const need = `${size} points${hint}`;
  refuse("wrong-count", count === undefined ? "landmarks" : "landmarks.length", count, need);
}

/** All keypoints of a person, and where those of the face begin among them. */
const WHOLE_BODY = { size: 133, face: 23 };

/** A face from COCO-WholeBody keypoints, a person's 133 or the face's own: x, y, visibility, x … */
export function pointsOfKeypoints(keypoints: readonly number[], size: number): MarkupPoints {
  const count = (keypoints as readonly number[] | undefined)?.length;
  const first = count === 3 * WHOLE_BODY.size ? WHOLE_BODY.face : 0;
  if (first === 0 && count !== 3 * size) {
    const field = count === undefined ? "landmarks" : "landmarks.length";
    const need = `${3 * size} or ${3 * WHOLE_BODY.size} numbers`;
    refuse("wrong-count", field, count, need);
  }
  return Array.from({ length: size }, (_, index): MarkupPoint => {
    const at = 3 * (first + index);
    return {
      x: keypoints[at] as number,
      y: keypoints[at + 1] as number,
      visibility: keypoints[at + 2],
    };
  });
}
