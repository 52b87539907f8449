import { deepPoint, flatPoint, hasDepth, type Point } from "../../units/index.js";
import type { FaceFrame } from "./frame.js";

/** A point of a photo in millimetres, with the midline upright: as the picture shows it. */
export function upright(point: Point<"px">, { midline, scale, origin }: FaceFrame): Point<"mm"> {
  const [upX, upY] = midline.line.direction;
  const right = point[0] - origin[0];
  const down = point[1] - origin[1];
  const x = scale.factor * (down * upX - right * upY);
  const y = scale.factor * (right * upX + down * upY);
  if (!hasDepth(point)) return flatPoint(x, y);
  const zero = hasDepth(origin) ? origin[2] : 0;
  return deepPoint(x, y, scale.factor * (point[2] - zero));
}
