import type { Face } from "../../landmarks/index.js";
import { requireSideOrder } from "../../landmarks/internal.js";
import { deepPoint, hasDepth, type Point, type Scale } from "../../units/index.js";
import { requireNames, requireObject, requirePositive, refusingAs } from "../../units/internal.js";
import { cameraOf, type CameraOptions, fromAfar } from "./camera-of.js";
import { eyeLevel, midlineOf } from "../midline/fit-midline.js";
import type { Midline } from "../midline/midline.js";
import type { FaceFrame } from "./frame.js";

/** How {@link faceFrame} works. */
export interface FaceFrameOptions extends CameraOptions {
  /** Default: {@link fitMidline} of the face. */
  readonly midline?: Midline<"px">;
}

/**
 * The frame of a face on a photo: its midline and its scale.
 *
 * The photo must not be mirrored; the origin of depth is the mean of the inner eye corners. Where
 * the scale knows the camera's distance, perspective is corrected in the face space: points with
 * depth by their own depth, brows without depth by the modelled skin; on a head without outer eye
 * corners and depth, brows lie in the plane of the scale. `toPhoto` then applies the perspective
 * again.
 *
 * @throws GeometryError `sides-swapped` for a mirrored photo, or y that points up; `out-of-range`
 * for a scale that is not more than 0; and what {@link fitMidline} throws
 *
 * @example
 * ```ts
 * import { type Face, faceFrame, mm, px, scaleFromReference, toFace } from "brow-geometry";
 * const face: Face<"px"> = {
 *   right: { endocanthion: px([460, 500]), cheilion: px([450, 690]) },
 *   left: { endocanthion: px([560, 500]), cheilion: px([570, 690]) },
 *   midline: { subnasale: px([510, 640]) },
 * };
 * const scale = scaleFromReference(px([0, 0]), px([300, 0]), mm(100));
 * toFace(px([630, 410]), faceFrame(face, scale)); // → [40.0, 30.0]
 * ```
 */
export function faceFrame(
  face: Face<"px">,
  scale: Scale,
  options: FaceFrameOptions = {},
): FaceFrame {
  return refusingAs("faceFrame", () => {
    requireObject("face", face, "a face");
    requireObject("scale", scale, "a scale");
    requirePositive("scale.factor", scale.factor);
    requireNames("options", options, ["midline", "cameraAxis", "prominence"]);
    const between = eyeLevel(face);
    const midline = options.midline ?? midlineOf(withoutPerspective(face, scale, between, options));
    requireSideOrder(face, "down");
    const [x, y] = midline.line.through;
    const eyes = between ?? midline.line.through;
    const origin = hasDepth(eyes) ? deepPoint(x, y, eyes[2]) : midline.line.through;
    const frame = { midline, scale, origin };
    const camera = cameraOf(face, frame, eyes, options);
    return camera === undefined ? frame : { ...frame, camera };
  });
}

/** What a midline is fitted to: a camera aimed elsewhere shows near points shifted sideways. */
function withoutPerspective(
  face: Face<"px">,
  scale: Scale,
  eyes: Point<"px"> | undefined,
  options: CameraOptions,
): Face<"px"> {
  return eyes === undefined ? face : fromAfar(face, scale, eyes, options);
}
