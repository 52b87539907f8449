import type { Direction } from "../../geometry/index.js";
import {
  type Face,
  type LandmarkName,
  landmarkUncertainty,
  mapFace,
} from "../../landmarks/index.js";
import {
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  length,
  type MeasuredPoint,
  type Unit,
} from "../../units/index.js";

/** Names under which a face's points go into an uncertainty calculation. */
export type PointName = `p${number}`;

/** The moves of a face's points as inputs of an uncertainty calculation, and the way back. */
export interface FaceInputs<U extends Unit> {
  /** No move at all, give or take, along the two axes of the face. */
  readonly moves: Readonly<Record<PointName, MeasuredPoint<U, FlatPoint<U>>>>;
  /** The face with its points moved. */
  readonly faceWith: (moves: Readonly<Record<PointName, FlatPoint<U>>>) => Face<U>;
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
 * Takes a face apart into the moves of its points, each as uncertain as its landmark. They go along and
 * across the midline, so that a plan is as sure of a face however the photo was turned. Depth stays as
 * it is: a plan reads it through the skin alone, whose uncertainty is an input of its own.
 *
 * @param read the landmarks that are uncertain; the others stay where they are
 * @param unitsPerMillimetre what a millimetre of landmark uncertainty is in the face's unit
 * @param midline where the midline runs in the face's space
 */
export function faceInputs<U extends Unit>(
  face: Face<U>,
  read: readonly LandmarkName[],
  unitsPerMillimetre: number,
  midline: Direction,
): FaceInputs<U> {
  const { symmetricPoints, ...labelled } = inOneOrder(face);
  const moves: Record<PointName, MeasuredPoint<U, FlatPoint<U>>> = {};
  let count = 0;
  mapFace<U, U>(labelled, (point, landmark) => {
    const name: PointName = `p${count++}`;
    if (landmark !== undefined && read.includes(landmark)) {
      const u = length<U>(landmarkUncertainty(face, landmark) * unitsPerMillimetre);
      moves[name] = { value: flatPoint<U>(0, 0), u };
    }
    return point;
  });
  const [alongX, alongY] = midline;
  return {
    moves,
    faceWith: (values) => {
      let next = 0;
      return mapFace<U, U>(labelled, (point) => {
        const move = values[`p${next++}`];
        if (move === undefined) return point;
        const [across, along] = move;
        const x = point[0] + across * alongY + along * alongX;
        const y = point[1] - across * alongX + along * alongY;
        return hasDepth(point) ? deepPoint<U>(x, y, point[2]) : flatPoint<U>(x, y);
      });
    },
  };
}

/** Landmarks in one order: sums in another differ in the last bits, and a record replays to the last one. */
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
