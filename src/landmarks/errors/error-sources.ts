import type { Direction } from "../../geometry/index.js";
import { type Face, landmarkUncertainty } from "../face/face.js";
import type { LandmarkName } from "../face/landmarks.js";
import { FACE_PARTS, type PointMoves, spotsOf } from "./point-moves.js";

/**
 * The independent causes of error of a face's points: how far one standard deviation of each moves them.
 * Each point errs by itself, along and across the midline.
 *
 * @param read the landmarks that are uncertain; the others stay where they are
 */
export function errorSources(
  face: Face<"mm">,
  read: readonly LandmarkName[],
): readonly PointMoves[] {
  return FACE_PARTS.flatMap((part) =>
    spotsOf(face, part).flatMap(({ landmark }, point): readonly PointMoves[] => {
      if (!read.includes(landmark)) return [];
      const u = landmarkUncertainty(face, landmark);
      return [0, 1].map((axis) => {
        const moves: Direction[] = [];
        moves[point] = axis === 0 ? [u, 0] : [0, u];
        return { [part]: moves };
      });
    }),
  );
}
