import type { Face, LandmarkUncertainty } from "../face/face.js";
import { faceNote } from "../face/notes.js";
import { MARKUP_ERRORS } from "./measured-errors.js";
import type { ErrorPlace, KnownErrors } from "./markup-errors.js";
import { moverOf, withMoves } from "./point-moves.js";

/** What decides whether a face is corrected. */
interface CorrectionOptions {
  readonly correct?: boolean;
  readonly uncertainty?: Partial<LandmarkUncertainty>;
}

/**
 * A face on a photo with its points where the truth lies in the mean, for a markup whose errors are
 * known; a brow stays on the skin that it was found on. Alare stays where it is not the point that was
 * measured. A face that lacks an eye corner stays as it is, and one for which an uncertainty is stated of
 * all landmarks or of the brow: it is from another source.
 */
export function correctErrors(
  face: Face<"px">,
  { correct, uncertainty: stated = {} }: CorrectionOptions,
  usualAlare: boolean,
  known: KnownErrors = MARKUP_ERRORS,
): Face<"px"> {
  const { source, notes = [] } = face;
  const own = stated.default ?? stated.landmarks?.brow;
  const errors = source && known[source.markup];
  if (source === undefined || errors === undefined || !(correct ?? own === undefined)) return face;
  const isKnown = (place: ErrorPlace): boolean => usualAlare || place !== "alare";
  const move = moverOf(face, -1);
  if (move === undefined) return face;
  const landmarks = {
    ...source.uncertainty.landmarks,
    ...errors.landmarks,
    ...stated.landmarks,
  };
  const shifts = move((place) => (isKnown(place) ? errors.places[place]?.shift : undefined));
  return {
    ...withMoves(face, shifts, 1),
    source: { ...source, corrected: true, uncertainty: { ...source.uncertainty, landmarks } },
    notes: [...notes, faceNote("corrected")],
  };
}
