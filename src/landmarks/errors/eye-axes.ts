import { type Direction, distance } from "../../geometry/index.js";
import type { Unit } from "../../units/index.js";
import type { Face } from "../face/face.js";

/**
 * A five-hundredth of the distance of the outer eye corners, about 0.2 mm, towards the client's left and
 * upwards: errors are given in it, in whole numbers.
 */
export interface EyeAxes {
  readonly leftwards: Direction;
  readonly upwards: Direction;
}

/**
 * The axes of the four eye corners; none where one of them is missing.
 *
 * @param sense 1 where a quarter turn from x to y leads from leftwards to upwards, as in the face
 * space; −1 on a photo
 */
export function eyeAxes<U extends Unit>(
  { right, left }: Face<U>,
  sense: 1 | -1,
): EyeAxes | undefined {
  const { endocanthion: inner, exocanthion: outer } = right;
  const { endocanthion: leftInner, exocanthion: leftOuter } = left;
  if (!inner || !outer || !leftInner || !leftOuter) return undefined;
  const x = leftInner[0] + leftOuter[0] - inner[0] - outer[0];
  const y = leftInner[1] + leftOuter[1] - inner[1] - outer[1];
  const unit = distance(outer, leftOuter) / PARTS / Math.hypot(x, y);
  return {
    leftwards: [x * unit, y * unit],
    upwards: [-sense * y * unit, sense * x * unit],
  };
}

const PARTS = 500;
