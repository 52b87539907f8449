import { type Face, landmarkUncertainty, mapFace } from "../landmarks/index.js";
import { flatPoint, length, type MeasuredPoint, type Point, type Unit } from "../units/index.js";

/** Names under which a face's points go into an uncertainty calculation. */
export type PointName = `p${number}`;

/** The points of a face as inputs of an uncertainty calculation, and the way back. */
export interface FaceInputs<U extends Unit> {
  readonly points: Readonly<Record<PointName, MeasuredPoint<U>>>;
  /** The face with other values in its points' places. */
  readonly faceWith: (points: Readonly<Record<PointName, Point<U>>>) => Face<U>;
}

/**
 * Takes a face apart into named points, each with the uncertainty of its landmark. Depth is left
 * out: a plan reads it through the skin alone, whose uncertainty is an input of its own.
 *
 * @param unitsPerMillimetre what a millimetre of landmark uncertainty is in the face's unit
 */
export function faceInputs<U extends Unit>(
  face: Face<U>,
  unitsPerMillimetre: number,
): FaceInputs<U> {
  const { relief, ...labelled } = face;
  const points: Record<PointName, MeasuredPoint<U>> = {};
  let count = 0;
  mapFace<U, U>(labelled, (point, landmark) => {
    const u = landmark === undefined ? 0 : landmarkUncertainty(face, landmark);
    const value = flatPoint<U>(point[0], point[1]);
    points[`p${count++}`] = { value, u: length<U>(u * unitsPerMillimetre) };
    return point;
  });
  return {
    points,
    faceWith: (values) => {
      let next = 0;
      return mapFace<U, U>(labelled, (point) => values[`p${next++}`] ?? point);
    },
  };
}
