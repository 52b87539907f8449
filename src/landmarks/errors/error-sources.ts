import type { Direction } from "../../geometry/index.js";
import { type Face, landmarkUncertainty } from "../face/face.js";
import type { LandmarkName } from "../face/landmarks.js";
import { FACE_PARTS, linesOf, type PointMoves } from "./point-moves.js";
import { stationErrors } from "./stations.js";

/**
 * The independent causes of error of a face's points: how far one standard deviation of each moves them,
 * along and across the midline. Each point errs by itself, those of a line by its stations.
 *
 * @param read the landmarks that are uncertain; the others stay where they are
 */
export function errorSources(
  face: Face<"mm">,
  read: readonly LandmarkName[],
): readonly PointMoves[] {
  return FACE_PARTS.flatMap((part) =>
    linesOf(face, part).flatMap(({ landmark, place, line }): readonly PointMoves[] => {
      if (!read.includes(landmark)) return [];
      const u = landmarkUncertainty(face, landmark);
      return stationErrors(line).flatMap((shares) =>
        [0, 1].map((axis) => {
          const moves = shares.map((share): Direction | undefined => {
            const by = share * u;
            if (by === 0) return undefined;
            return axis === 0 ? [by, 0] : [0, by];
          });
          return { [part]: { [place]: moves } };
        }),
      );
    }),
  );
}
