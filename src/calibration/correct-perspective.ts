import { midpoint } from "../geometry/index.js";
import { type Face, mapFace } from "../landmarks/index.js";
import {
  deepPoint,
  GeometryError,
  hasDepth,
  type Length,
  note,
  type Point,
  requirePositive,
  type Unit,
} from "../units/index.js";

/**
 * A face as a camera infinitely far away would show it: every point with depth moves to where its
 * millimetres are those of the inner eye corners. Points without depth stay where they are. A note on
 * the face says that it was done, so that {@link scaleFromIris} no longer allows for perspective.
 *
 * What lies z nearer to the camera than the inner eye corners, D away, reads 1/(1 − z/D) times too
 * large about the camera's axis (pinhole). The axis is where the camera pointed, the middle of an
 * uncropped photo; default between the inner eye corners.
 *
 * @throws GeometryError `missing-landmark` without inner eye corners; `not-finite`, `out-of-range` for
 * a distance that leaves a point behind the camera
 *
 * @example
 * ```ts
 * import { correctPerspective, type Face, mm } from "brow-geometry";
 * const face: Face<"mm"> = {
 *   right: { endocanthion: mm([-16, 0, 0]) },
 *   left: { endocanthion: mm([16, 0, 0]), alare: mm([16, -40, 20]) },
 *   midline: {},
 * };
 * correctPerspective(face, mm(400)).left.alare; // → [15.2, -38.0, 20.0]
 * ```
 */
export function correctPerspective<U extends Unit>(
  face: Face<U>,
  cameraDistance: Length<U>,
  options: { readonly axis?: Point<U> } = {},
): Face<U> {
  const where = "correctPerspective";
  requirePositive(where, "cameraDistance", cameraDistance);
  const origin = eyeMiddle(where, face);
  const zero = hasDepth(origin) ? origin[2] : 0;
  const [axisX, axisY] = options.axis ?? origin;
  const corrected = mapFace<U, U>(face, (point) => {
    if (!hasDepth(point)) return point;
    const nearer = point[2] - zero;
    const share = 1 - nearer / cameraDistance;
    if (share <= 0) {
      throw new GeometryError("out-of-range", {
        where,
        field: "cameraDistance",
        value: cameraDistance,
        need: `more than the depth of every point, ${nearer}`,
      });
    }
    return deepPoint<U>(
      axisX + share * (point[0] - axisX),
      axisY + share * (point[1] - axisY),
      point[2],
    );
  });
  return { ...corrected, notes: [...(face.notes ?? []), CORRECTED] };
}

const CORRECTED = note(
  "perspective-corrected",
  "Perspective was taken out of the points by their depth.",
);

function eyeMiddle<U extends Unit>(where: string, { right, left }: Face<U>): Point<U> {
  if (right.endocanthion === undefined || left.endocanthion === undefined) {
    throw new GeometryError("missing-landmark", {
      where,
      field: right.endocanthion === undefined ? "right.endocanthion" : "left.endocanthion",
      value: undefined,
      need: "a point",
    });
  }
  return midpoint(right.endocanthion, left.endocanthion);
}
