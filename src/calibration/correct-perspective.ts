import { midpoint } from "../geometry/index.js";
import { type Face, mapFace, requireLandmarks } from "../landmarks/index.js";
import {
  deepPoint,
  GeometryError,
  hasDepth,
  type Length,
  type Point,
  requirePositive,
  type Scale,
} from "../units/index.js";

/** What is known of the camera, beyond its distance. */
export interface PerspectiveOptions {
  /** From the camera to the inner eye corners; default the scale's own `cameraDistance`. */
  readonly cameraDistance?: Length<"mm">;
  /** Where the camera pointed: the middle of an uncropped photo; default between the inner eye corners. */
  readonly axis?: Point<"px">;
}

/**
 * A face as a camera infinitely far away would show it: every point with depth moves to where its
 * millimetres are those of the inner eye corners. Points without depth stay where they are.
 *
 * What lies z nearer than the inner eye corners, D away, reads 1/(1 − z/D) times too large about the
 * camera's axis (pinhole).
 *
 * @throws GeometryError `missing-landmark` without inner eye corners; `out-of-range` where the
 * distance is unknown or a point lies behind the camera
 *
 * @example
 * ```ts
 * import { correctPerspective, type Face, mm, px, scaleFromReference } from "brow-geometry";
 * const face: Face<"px"> = {
 *   right: { endocanthion: px([460, 500, 0]), alare: px([460, 650, 100]) },
 *   left: { endocanthion: px([560, 500, 0]), alare: px([560, 650, 100]) },
 *   midline: {},
 * };
 * const scale = scaleFromReference(px([0, 0]), px([100, 0]), mm(32));
 * const { right } = correctPerspective(face, scale, { cameraDistance: mm(400) });
 * right.alare; // → [464.0, 638.0, 100.0]
 * ```
 */
export function correctPerspective(
  face: Face<"px">,
  scale: Scale,
  options: PerspectiveOptions = {},
): Face<"px"> {
  const where = "correctPerspective";
  const away = options.cameraDistance ?? scale.cameraDistance?.value;
  if (away === undefined) {
    throw new GeometryError("out-of-range", {
      where,
      field: "cameraDistance",
      value: away,
      need: "the distance of the camera in millimetres",
    });
  }
  requirePositive(where, "cameraDistance", away);
  requirePositive(where, "scale.factor", scale.factor);
  const { endocanthion: right } = requireLandmarks(face.right, "endocanthion");
  const { endocanthion: left } = requireLandmarks(face.left, "endocanthion");
  const origin = midpoint(right, left);
  const zero = hasDepth(origin) ? origin[2] : 0;
  const [axisX, axisY] = options.axis ?? origin;
  return mapFace<"px", "px">(face, (point) => {
    if (!hasDepth(point)) return point;
    const share = 1 - (scale.factor * (point[2] - zero)) / away;
    if (share <= 0) {
      throw new GeometryError("out-of-range", {
        where,
        field: "cameraDistance",
        value: away,
        need: `more than the depth of every point, ${scale.factor * (point[2] - zero)}`,
      });
    }
    return deepPoint(
      axisX + share * (point[0] - axisX),
      axisY + share * (point[1] - axisY),
      point[2],
    );
  });
}
