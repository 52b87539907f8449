import { type Note, note, type Unit } from "../../units/index.js";
import type { Face, FaceNoteCode } from "../face/face.js";
import type { Place } from "./markup.js";
import type { MarkupOptions } from "./markup-options.js";
import type { PicturePoints } from "./markup-points.js";

/** What was done to the whole picture on the way in. */
export function notesOnPicture(options: MarkupOptions<string>): readonly Note<FaceNoteCode>[] {
  const notes: Note<FaceNoteCode>[] = [];
  if (options.coordinates === "normalised") {
    const { width, height } = options.image;
    notes.push(
      note(
        "scaled-to-pixels",
        "Coordinates were shares of a picture {width} wide and {height} high; they are pixels now.",
        { width, height },
      ),
    );
  }
  if (options.mirrored === "frame") {
    notes.push(
      note(
        "sides-swapped",
        "The detector saw a flipped picture: its right and left were exchanged.",
      ),
    );
  }
  if (options.mirrored === "frame" || options.mirrored === "coordinates") {
    notes.push(
      note(
        "mirroring-undone",
        "The picture was flipped sideways; points lie in the picture as taken.",
      ),
    );
  }
  return notes;
}

/** A landmark or some points of a line are not there. */
export function landmarkMissing(
  name: string,
  place: Place,
  points: PicturePoints,
  labels: readonly string[] | undefined,
): Note<FaceNoteCode> {
  const indices = typeof place === "number" ? [place] : place;
  const missing = indices
    .filter((index) => points[index] === undefined)
    .map((index) => labels?.[index] ?? index)
    .join(", ");
  return missing === ""
    ? note("point-missing", "{landmark} is left out: its point does not lie where it should.", {
        landmark: name,
      })
    : note(
        "point-missing",
        "{landmark} is not complete: point {points} of the markup is missing.",
        {
          landmark: name,
          points: missing,
        },
      );
}

/** Neighbours at the same place were joined. */
export function repeatsLeftOut(name: string, count: number): Note<FaceNoteCode> {
  return note("repeated-points", "{landmark} repeats points, {count} too many: once is enough.", {
    landmark: name,
    count,
  });
}

/** The detector had put each iris behind the other eye's number. */
export function irisesExchanged(): Note<FaceNoteCode> {
  return note("irises-swapped", "Each iris lay in the other eye; they were exchanged.");
}

/** Landmarks of a face that its source only approximates. */
export function standInNotes<U extends Unit>({
  right,
  left,
  midline,
  standIns = [],
}: Face<U>): readonly Note<FaceNoteCode>[] {
  const held = new Set([right, left, midline].flatMap((part) => Object.keys(part)));
  return standIns
    .filter(({ landmark }) => held.has(landmark))
    .map(({ landmark, instead }) =>
      note("stand-in", "{landmark} is only approximated: {instead}.", { landmark, instead }),
    );
}
