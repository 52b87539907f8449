import { GeometryError } from "../../units/index.js";
import type { MarkupPoint, MarkupPoints } from "./markups.js";

/** All keypoints of a person, and where those of the face begin among them. */
const WHOLE_BODY = { size: 133, face: 23 };

/**
 * The points of a face among COCO-WholeBody keypoints: all 133 of a person, or those of the face alone,
 * as a flat list x, y, visibility, x, y, visibility …
 */
export function pointsOfKeypoints(
  where: string,
  keypoints: readonly number[],
  size: number,
): MarkupPoints {
  const count = (keypoints as readonly number[] | undefined)?.length;
  const first = count === 3 * WHOLE_BODY.size ? WHOLE_BODY.face : 0;
  if (first === 0 && count !== 3 * size) {
    throw new GeometryError("wrong-count", {
      where,
      field: count === undefined ? "landmarks" : "landmarks.length",
      value: count,
      need: `${3 * size} or ${3 * WHOLE_BODY.size} numbers`,
    });
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
