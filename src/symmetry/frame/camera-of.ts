import { type Face, mapFace, type Skin } from "../../landmarks/index.js";
import { usualSkin } from "../../landmarks/internal.js";
import {
  deepPoint,
  flatPoint,
  hasDepth,
  type Length,
  length,
  type Point,
  type Scale,
} from "../../units/index.js";
import { requirePositive, unlessRefused } from "../../units/internal.js";
import { type Camera, enlargement, prominenceOf } from "./camera.js";
import { type FaceFrame, ontoFace, upright } from "./frame.js";

/** What is known of a camera beside its distance, which its photo's scale knows. */
export interface CameraOptions {
  /** Where the camera pointed, the middle of an uncropped photo; default between the inner eye corners. */
  readonly cameraAxis?: Point<"px">;
  /**
   * How much nearer to the camera than the inner eye corners the skin between the brows lies, for brows
   * without depth; default 15 mm.
   */
  readonly prominence?: Length<"mm">;
}

/** The camera of a photo, where its scale knows how far away it was. */
export function cameraOf(
  face: Face<"px">,
  frame: FaceFrame,
  eyes: Point<"px">,
  options: CameraOptions,
): Camera | undefined {
  const { cameraDistance } = frame.scale;
  if (cameraDistance === undefined) return undefined;
  requirePositive("scale.cameraDistance", cameraDistance.value);
  const [x, y] = upright(options.cameraAxis ?? eyes, frame);
  const camera = {
    distance: cameraDistance.value,
    axis: flatPoint<"mm">(x, y),
    prominence: length(0),
  };
  const skin =
    frame.turning?.skin ??
    // By their own depth, so that the skin is the face's and not its picture's.
    skinBefore(mapFace(face, ontoFace({ ...frame, camera: { ...camera, skin: FLAT } })));
  const prominence = options.prominence ?? prominenceOf(skin);
  return { ...camera, skin, prominence: skin.kind === "fitted" ? length(0) : prominence };
}

const FLAT: Skin = { kind: "flat" };

/** A head without features tells of no skin: its dots lie in the plane in which the scale holds. */
function skinBefore(face: Face<"mm">): Skin {
  const own = unlessRefused(
    () => usualSkin(face),
    (code) => code === "missing-landmark",
  );
  return own ?? FLAT;
}

/** A face with depth as a camera infinitely far away would show it. */
export function fromAfar(
  face: Face<"px">,
  scale: Scale,
  eyes: Point<"px">,
  { cameraAxis = eyes }: CameraOptions,
): Face<"px"> {
  const { cameraDistance } = scale;
  if (cameraDistance === undefined) return face;
  const distance = cameraDistance.value;
  requirePositive("scale.cameraDistance", distance);
  const [axisX, axisY] = cameraAxis;
  const zero = hasDepth(eyes) ? eyes[2] : 0;
  return mapFace<"px", "px">(face, (point) => {
    if (!hasDepth(point)) return point;
    const [x, y, depth] = point;
    const share = 1 / enlargement(scale.factor * (depth - zero), { distance });
    return deepPoint(axisX + share * (x - axisX), axisY + share * (y - axisY), depth);
  });
}
