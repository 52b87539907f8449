import type { Face } from "../face/face.js";
import type { MarkupOptions } from "./markup-options.js";
import { lengthOf, type MarkupPoints } from "./markup-points.js";
import { MESH_468, MESH_478, type MeshAlare } from "./mesh-markup.js";
import { faceFromMarkup } from "./read-markup.js";

/**
 * A face from the 478 points of the face mesh, or from the 468 of its form without irises.
 *
 * Depth comes from z, which counts in the unit of x and is smaller for nearer. Alare is a stand-in
 * about 4 mm lateral of the endocanthion, and the brow is a template, not hair: see `standIns`.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`, `image-size-needed`,
 * `inconsistent` where the unit of the coordinates is not the one named, `sides-swapped`
 *
 * @example
 * ```ts
 * import { fromMesh478, type MarkupPoints } from "brow-geometry";
 * const mapped = (landmarks: MarkupPoints) =>
 *   fromMesh478(landmarks, { coordinates: "normalised", image: { width: 1920, height: 1280 } });
 * mapped([]); // throws GeometryError: landmarks.length is 0; needs 478 points
 * ```
 */
export function fromMesh478(
  landmarks: MarkupPoints,
  options: MarkupOptions<MeshAlare>,
): Face<"px"> {
  const markup = lengthOf(landmarks) === MESH_468.size ? MESH_468 : MESH_478;
  return faceFromMarkup("fromMesh478", markup, landmarks, options);
}
