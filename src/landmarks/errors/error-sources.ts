import { type Face, landmarkUncertainty } from "../face/face.js";
import type { LandmarkName } from "../face/landmarks.js";
import type { KnownErrors, MarkupErrors } from "./markup-errors.js";
import { MARKUP_ERRORS } from "./measured-errors.js";
import { FACE_PARTS, linesOf, type Move, moverOf, type PointMoves } from "./point-moves.js";
import { stationErrors } from "./stations.js";

/**
 * The independent causes of error of a face's points: how far one standard deviation of each moves them,
 * along and across the midline. Each point errs by itself, those of a line by its stations. What remains
 * of a detector's errors once they are corrected goes together along the borders and between the sides.
 *
 * @param read the landmarks that are uncertain by themselves; the others stay where they are
 */
export function errorSources(
  face: Face<"mm">,
  read: readonly LandmarkName[],
  known: KnownErrors = MARKUP_ERRORS,
): readonly PointMoves[] {
  const { source } = face;
  const errors = source?.corrected === true ? known[source.markup] : undefined;
  const patterns = errors && read.includes("brow") ? patternsOn(face, errors) : [];
  const own = FACE_PARTS.flatMap((part) =>
    linesOf(face, part).flatMap(({ landmark, place, line }): readonly PointMoves[] => {
      if (!read.includes(landmark) || (landmark === "brow" && patterns.length > 0)) return [];
      const u = errors?.others ?? landmarkUncertainty(face, landmark);
      const [aside, up] = errors?.places[place]?.rest ?? [u, u];
      return stationErrors(line).flatMap((shares) =>
        [
          [aside, 0],
          [0, up],
        ].map(([x = 0, y = 0]) => {
          const moves = shares.map((share): Move | undefined =>
            share === 0 ? undefined : [share * x, share * y],
          );
          return { [part]: { [place]: moves } };
        }),
      );
    }),
  );
  return [...patterns, ...own];
}

/** How far one standard deviation of each pattern moves the points of a face. */
function patternsOn(face: Face<"mm">, { places }: MarkupErrors): readonly PointMoves[] {
  const move = moverOf(face, 1);
  if (move === undefined) return [];
  return (["alike", "unlike"] as const).flatMap((kind) =>
    (places.upper?.[kind] ?? []).map((_, index) =>
      move((place) => places[place]?.[kind]?.[index], kind === "alike" ? 1 : -1),
    ),
  );
}
