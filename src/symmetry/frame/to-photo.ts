import type { Brow, BrowDots, CompleteDots, Face } from "../../landmarks/index.js";
import {
  type DeepPoint,
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type Point,
  type Polyline,
} from "../../units/index.js";
import type { FaceFrame } from "./frame.js";
import { mapShape, type Shape } from "../mirroring/shape.js";
import { intoPicture } from "./sight.js";

/**
 * A point, a polyline, a brow, its dots or a whole face of the face space on the photo of a frame:
 * the way back from `toFace`. In the frame of a turned head a point without depth is lifted onto the
 * skin first.
 *
 * @example
 * ```ts
 * import { faceFrame, mm, px, scaleFromReference, toPhoto } from "brow-geometry";
 * const frame = faceFrame(
 *   {
 *     right: { endocanthion: px([460, 500]), cheilion: px([450, 690]) },
 *     left: { endocanthion: px([560, 500]), cheilion: px([570, 690]) },
 *     midline: {},
 *   },
 *   scaleFromReference(px([0, 0]), px([300, 0]), mm(100)),
 * );
 * toPhoto(mm([[0, 0], [40, 30]]), frame); // → [[510.0, 500.0], [630.0, 410.0]]
 * ```
 */
export function toPhoto(of: FlatPoint<"mm">, frame: FaceFrame): FlatPoint<"px">;
export function toPhoto(of: DeepPoint<"mm">, frame: FaceFrame): DeepPoint<"px">;
export function toPhoto(of: Point<"mm">, frame: FaceFrame): Point<"px">;
export function toPhoto(of: Polyline<"mm">, frame: FaceFrame): Polyline<"px">;
export function toPhoto(of: Face<"mm">, frame: FaceFrame): Face<"px">;
export function toPhoto(of: Brow<"mm">, frame: FaceFrame): Brow<"px">;
export function toPhoto(of: CompleteDots<"mm">, frame: FaceFrame): CompleteDots<"px">;
export function toPhoto(of: BrowDots<"mm">, frame: FaceFrame): BrowDots<"px">;
export function toPhoto(of: Shape<"mm">, frame: FaceFrame): Shape<"px"> {
  return mapShape<"mm", "px">(of, (point, landmark) =>
    inPixels(intoPicture(point, frame, landmark), frame),
  );
}

function inPixels(point: Point<"mm">, { midline, scale, origin }: FaceFrame): Point<"px"> {
  const [upX, upY] = midline.line.direction;
  const left = point[0] / scale.factor;
  const up = point[1] / scale.factor;
  const x = origin[0] - left * upY + up * upX;
  const y = origin[1] + left * upX + up * upY;
  if (!hasDepth(point)) return flatPoint(x, y);
  const zero = hasDepth(origin) ? origin[2] : 0;
  return deepPoint(x, y, point[2] / scale.factor + zero);
}
