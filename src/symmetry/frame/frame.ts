import {
  deepPoint,
  type DeepPoint,
  flatPoint,
  type FlatPoint,
  hasDepth,
  type Point,
  type Polyline,
  type Scale,
} from "../../units/index.js";
import type { Midline } from "../midline/midline.js";
import type { Camera } from "./camera.js";
import type { Turning } from "./turning.js";
import type { Brow, BrowDots, CompleteDots, Face, PointMap } from "../../landmarks/index.js";
import { refusingAs } from "../../units/internal.js";
import { mapShape, type Shape } from "../mirroring/shape.js";
import { fromPicture, intoPicture } from "./sight.js";

/**
 * The conversion between one photo and the face on it: a value that knows both ends.
 *
 * It turns the face upright, so that the midline is x = 0 and y points up, and reverses orientation.
 */
export interface FaceFrame {
  readonly midline: Midline<"px">;
  readonly scale: Scale;
  /** Where the face space has its origin; with depth where both inner eye corners have it. */
  readonly origin: Point<"px">;
  /** Present where a turned head is looked at from its own front: see `turnToFront`. */
  readonly turning?: Turning;
  /** Present where the scale knows how far away the camera was: perspective is corrected. */
  readonly camera?: Camera;
  /**
   * Standard uncertainty, in degrees, of how far the chin was raised, which heights depend on. Default 5,
   * or as far as depth shows that it was raised and nobody corrected it; 0 compares landmarks of one photo.
   */
  readonly pitchU?: number;
}

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

/**
 * A point, a polyline, a brow, its dots or a whole face of a photo in the face space: millimetres,
 * x towards the client's left, y up along the midline, depth from the level of the inner eye corners.
 * In the frame of a turned head a point without depth is taken to lie on the skin.
 *
 * @throws GeometryError `no-solution` where a turned head has no skin behind a point without depth
 *
 * @example
 * ```ts
 * import { faceFrame, mm, px, scaleFromReference, toFace, toPhoto } from "brow-geometry";
 * const frame = faceFrame(
 *   {
 *     right: { endocanthion: px([460, 500]), cheilion: px([450, 690]) },
 *     left: { endocanthion: px([560, 500]), cheilion: px([570, 690]) },
 *     midline: {},
 *   },
 *   scaleFromReference(px([0, 0]), px([300, 0]), mm(100)),
 * );
 * const arch = toFace(px([630, 410]), frame); // → [40.0, 30.0]
 * toPhoto(arch, frame); // → [630.0, 410.0]
 * ```
 */
export function toFace(of: FlatPoint<"px">, frame: FaceFrame): FlatPoint<"mm">;
export function toFace(of: DeepPoint<"px">, frame: FaceFrame): DeepPoint<"mm">;
export function toFace(of: Point<"px">, frame: FaceFrame): Point<"mm">;
export function toFace(of: Polyline<"px">, frame: FaceFrame): Polyline<"mm">;
export function toFace(of: Face<"px">, frame: FaceFrame): Face<"mm">;
export function toFace(of: Brow<"px">, frame: FaceFrame): Brow<"mm">;
export function toFace(of: CompleteDots<"px">, frame: FaceFrame): CompleteDots<"mm">;
export function toFace(of: BrowDots<"px">, frame: FaceFrame): BrowDots<"mm">;
export function toFace(of: Shape<"px">, frame: FaceFrame): Shape<"mm"> {
  return refusingAs("toFace", () => mapShape(of, ontoFace(frame)));
}

/** What {@link toFace} does to every point. */
export function ontoFace(frame: FaceFrame): PointMap<"px", "mm"> {
  return (point, landmark) => fromPicture(upright(point, frame), frame, landmark);
}

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
  return refusingAs("toPhoto", () => {
    return mapShape<"mm", "px">(of, (point, landmark) =>
      inPixels(intoPicture(point, frame, landmark), frame),
    );
  });
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
