import { deepPoint, flatPoint, hasDepth } from "brow-geometry/units";
import { type Face, type Point } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";

/** How a face was put into a picture. */
export interface Pose {
  /** Millimetres a pixel. */
  readonly factor: number;
  /** Degrees, positive when the chin end goes towards the client's left. */
  readonly tilt: number;
  /** Where the face's origin lies in the picture. */
  readonly at: readonly [x: number, y: number];
}

/** The picture of a face in millimetres: turned by the tilt, shrunk, y pointing down. */
export function photograph(face: Face<"mm">, pose: Pose): Face<"px"> {
  const angle = (pose.tilt * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return mapFace(face, (point: Point<"mm">): Point<"px"> => {
    const right = point[0] / pose.factor;
    const down = -point[1] / pose.factor;
    const x = pose.at[0] + right * cos + down * sin;
    const y = pose.at[1] - right * sin + down * cos;
    return hasDepth(point) ? deepPoint(x, y, point[2] / pose.factor) : flatPoint(x, y);
  });
}
