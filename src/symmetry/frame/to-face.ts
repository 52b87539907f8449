import type { Brow, BrowDots, CompleteDots, Face } from "../../landmarks/index.js";
import type { DeepPoint, FlatPoint, Point, Polyline } from "../../units/index.js";
import { refusingAs } from "../../units/internal.js";
import type { FaceFrame } from "./frame.js";
import { mapShape, type Shape } from "../mirroring/shape.js";
import { fromPicture } from "./sight.js";
import { upright } from "./upright.js";

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
  return refusingAs("toFace", () =>
    mapShape<"px", "mm">(of, (point, landmark) =>
      fromPicture(upright(point, frame), frame, landmark),
    ),
  );
}
