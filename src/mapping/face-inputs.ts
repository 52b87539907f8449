import { type Face, type LandmarkName, landmarkUncertainty, mapFace } from "../landmarks/index.js";
import {
  deepPoint,
  flatPoint,
  hasDepth,
  length,
  type MeasuredPoint,
  type Point,
  type Unit,
} from "../units/index.js";

/** Names under which a face's points go into an uncertainty calculation. */
export type PointName = `p${number}`;

/** The points of a face as inputs of an uncertainty calculation, and the way back. */
export interface FaceInputs<U extends Unit> {
  readonly points: Readonly<Record<PointName, MeasuredPoint<U>>>;
  /** The face with other values in its points' places. */
  readonly faceWith: (points: Readonly<Record<PointName, Point<U>>>) => Face<U>;
}

/** Landmarks on whose place a plan depends once the face space is given. */
export const READ_ON_FACE: readonly LandmarkName[] = [
  "endocanthion",
  "exocanthion",
  "pupil",
  "limbusLateral",
  "alare",
  "upperLid",
  "brow",
];

/** Landmarks on whose place a plan depends where the midline is fitted to them too. */
export const READ_ON_PHOTO: readonly LandmarkName[] = [
  ...READ_ON_FACE,
  "cheilion",
  "glabella",
  "sellion",
  "pronasale",
  "subnasale",
  "labialeSuperius",
  "stomion",
];

/**
 * Takes a face apart into named points, each with the uncertainty of its landmark. Depth stays as it
 * is: a plan reads it through the skin alone, whose uncertainty is an input of its own.
 *
 * @param read the landmarks that are uncertain; the others stay where they are
 * @param unitsPerMillimetre what a millimetre of landmark uncertainty is in the face's unit
 */
export function faceInputs<U extends Unit>(
  face: Face<U>,
  read: readonly LandmarkName[],
  unitsPerMillimetre: number,
): FaceInputs<U> {
  const { relief, ...labelled } = inOneOrder(face);
  const points: Record<PointName, MeasuredPoint<U>> = {};
  let count = 0;
  mapFace<U, U>(labelled, (point, landmark) => {
    const name: PointName = `p${count++}`;
    if (landmark !== undefined && read.includes(landmark)) {
      const u = length<U>(landmarkUncertainty(face, landmark) * unitsPerMillimetre);
      points[name] = { value: flatPoint<U>(point[0], point[1]), u };
    }
    return point;
  });
  return {
    points,
    faceWith: (values) => {
      let next = 0;
      return mapFace<U, U>(labelled, (point) => {
        const moved = values[`p${next++}`];
        if (moved === undefined) return point;
        return hasDepth(point) ? deepPoint<U>(moved[0], moved[1], point[2]) : moved;
      });
    },
  };
}

/**
 * The face with its landmarks in one order, whoever wrote them down: sums of the same terms in
 * another order differ in the last bits, and a record has to replay to the last one.
 */
function inOneOrder<U extends Unit>(face: Face<U>): Face<U> {
  return {
    ...face,
    right: sorted(face.right),
    left: sorted(face.left),
    midline: sorted(face.midline),
  };
}

function sorted<Part extends object>(part: Part): Part {
  const entries = Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1));
  return Object.fromEntries(entries) as Part;
}
