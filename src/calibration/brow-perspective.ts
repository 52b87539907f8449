import {
  type Length,
  measured,
  type Measured,
  type Note,
  type ScaleNoteCode,
} from "../units/index.js";
import { note, requirePositive, IRIS_NOTES } from "../units/internal.js";

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

/**
 * What perspective adds to the relative uncertainty of a length on a brow scaled by the irises: nothing
 * where the camera's distance is known, since the face space is then free of it.
 */
export function browPerspective(
  where: string,
  cameraDistance: Measured<Length<"mm">> | undefined,
): { readonly u: number; readonly note: Note<ScaleNoteCode> } {
  if (cameraDistance !== undefined) {
    const { value: distance } = measured(cameraDistance.value, cameraDistance.u);
    requirePositive(where, "cameraDistance", distance);
    return { u: 0, note: note(IRIS_NOTES, "perspective-corrected", { distance }) };
  }
  return {
    u: DEPTH_SPREAD / USUAL_CAMERA,
    note: note(IRIS_NOTES, "perspective-unknown", {
      distance: NEAREST_CAMERA,
      start: 100 * (1 / (1 - NEARER_AT_START / NEAREST_CAMERA) - 1),
      tail: 100 * (1 - 1 / (1 + FARTHER_AT_TAIL / NEAREST_CAMERA)),
    }),
  };
}
