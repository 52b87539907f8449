import { type Face, mapFace } from "brow-geometry/landmarks";
import { flatPoint } from "brow-geometry/units";
import type { Picture, Shot } from "../appointment/basis.js";
import { faceOf, PLAIN_FACE } from "../appointment/readings.js";
import { shotOf } from "./shot.js";

/** How wide the plain face is laid over a photo, outer eye corners to the photo's width. */
const SHARE = 0.4;

/** The plain face over a photo, for somebody to pull where the face is. */
export function handShot(picture: Picture): Shot {
  const { width, height } = picture;
  const perMm = (SHARE * width) / PLAIN_FACE.face.outerCorners;
  const found: Face<"px"> = mapFace(faceOf(PLAIN_FACE), ([x, y]) =>
    flatPoint<"px">(width / 2 + perMm * x, height / 2 - perMm * y),
  );
  return shotOf(found, { kind: "irises" }, picture);
}
