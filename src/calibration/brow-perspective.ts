import type { Face } from "../landmarks/index.js";
import {
  type Length,
  type Measured,
  type Note,
  note,
  requirePositive,
  type ScaleNoteCode,
} from "../units/index.js";

/**
 * How far from the plane of the irises a brow lies: its start about 15 mm nearer to the camera, its
 * tail end about 10 mm farther.
 */
const NEARER_AT_START = 15;
const FARTHER_AT_TAIL = 10;

/** Root mean square of a depth spread evenly from one to the other. */
const DEPTH_SPREAD = Math.sqrt(
  (NEARER_AT_START ** 3 + FARTHER_AT_TAIL ** 3) / (3 * (NEARER_AT_START + FARTHER_AT_TAIL)),
);

/**
 * Where the camera may stand when nobody says: from a phone at arm's length to the distance from
 * which portraits count as free of distortion (about 1.5 m: JAMA Facial Plast Surg 2018), in mm.
 */
const NEAREST_CAMERA = 400;
const FARTHEST_CAMERA = 1500;

/** Of a distance spread evenly between the two, the root mean square of 1/distance is 1/√(a b). */
const USUAL_CAMERA = Math.sqrt(NEAREST_CAMERA * FARTHEST_CAMERA);

/** What perspective adds to the relative uncertainty of a length on a brow scaled by the irises. */
export function browPerspective(
  where: string,
  face: Face<"px">,
  cameraDistance: Measured<Length<"mm">> | undefined,
): { readonly u: number; readonly note: Note<ScaleNoteCode> } {
  const away = cameraDistance?.value ?? NEAREST_CAMERA;
  requirePositive(where, "cameraDistance", away);
  if (face.notes?.some(({ code }) => code === "perspective-corrected") === true) {
    return {
      u: 0,
      note: note(
        "perspective-corrected",
        "Perspective was taken out of the points by their depth before they were scaled.",
      ),
    };
  }
  return {
    u: DEPTH_SPREAD / (cameraDistance?.value ?? USUAL_CAMERA),
    note: note(
      "perspective-unknown",
      "A brow's start is nearer to the camera than the iris and its tail end farther: from {distance:0} mm they read {start:1} % large and {tail:1} % small.",
      {
        distance: away,
        start: 100 * (1 / (1 - NEARER_AT_START / away) - 1),
        tail: 100 * (1 - 1 / (1 + FARTHER_AT_TAIL / away)),
      },
    ),
  };
}
