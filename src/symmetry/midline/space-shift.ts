import { distanceAlongLine, midpoint, pointOnLine } from "../../geometry/index.js";
import { type FaceWith, type PointMap } from "../../landmarks/index.js";
import { deepPoint, flatPoint, hasDepth } from "../../units/index.js";
import { type FittingMethod, lineAnew } from "./midline-methods.js";

/** How the face space would lie in itself, had it been laid through a face again. */
export interface SpaceShift {
  /** Where its origin would lie, in mm. */
  readonly x: number;
  readonly y: number;
  /** How far its midline would lean towards the client's left at the forehead, in radians. */
  readonly lean: number;
}

/** Where the space of a face lies by its own landmarks: on the midline, level with the inner eye corners. */
export function spaceOf(face: FaceWith<"mm", "endocanthion">, method: FittingMethod): SpaceShift {
  const line = lineAnew(face, method);
  const eyes = midpoint(face.right.endocanthion, face.left.endocanthion);
  const [x, y] = pointOnLine(line, distanceAlongLine(eyes, line));
  const [aside, up] = line.direction;
  return { x, y, lean: up < 0 ? Math.atan2(-aside, -up) : Math.atan2(aside, up) };
}

/** Takes points into a space that lies elsewhere. */
export function intoSpace({ x, y, lean }: SpaceShift): PointMap<"mm", "mm"> {
  const [cosine, sine] = [Math.cos(lean), Math.sin(lean)];
  return (point) => {
    const [right, up] = [point[0] - x, point[1] - y];
    const across = right * cosine - up * sine;
    const along = right * sine + up * cosine;
    return hasDepth(point)
      ? deepPoint<"mm">(across, along, point[2])
      : flatPoint<"mm">(across, along);
  };
}
