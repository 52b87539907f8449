import type { Note } from "../units/index.js";
import type { FaceNoteCode } from "./face.js";
import type { MarkupOptions } from "./markup-options.js";
import type { PicturePoints } from "./markup-points.js";

/** What was done to the whole picture on the way in. */
export function notesOnPicture(options: MarkupOptions<string>): readonly Note<FaceNoteCode>[] {
  const notes: Note<FaceNoteCode>[] = [];
  if (options.coordinates === "normalised") {
    const { width, height } = options.image;
    notes.push({
      code: "scaled-to-pixels",
      text: `Coordinates were shares of a picture ${width} wide and ${height} high; they are pixels now.`,
      values: { width, height },
    });
  }
  if (options.mirrored === "frame") {
    notes.push({
      code: "sides-swapped",
      text: "The detector saw a flipped picture: its right and left were exchanged.",
      values: {},
    });
  }
  if (options.mirrored === "frame" || options.mirrored === "coordinates") {
    const width = options.image?.width ?? 0;
    notes.push({
      code: "mirroring-undone",
      text: "The picture was flipped sideways; coordinates were turned back to the picture as taken.",
      values: { width },
    });
  }
  return notes;
}

/** A landmark or some points of a line are not there. */
export function landmarkMissing(
  name: string,
  indices: readonly number[],
  points: PicturePoints,
): Note<FaceNoteCode> {
  const missing = indices.filter((index) => points[index] === undefined).join(", ");
  return {
    code: "point-missing",
    text:
      missing === ""
        ? `${name} is left out: its point does not lie where it should.`
        : `${name} is not complete: without point ${missing} of the markup.`,
    values: { landmark: name, points: missing },
  };
}

/** Neighbours at the same place were joined. */
export function repeatsLeftOut(name: string, count: number): Note<FaceNoteCode> {
  return {
    code: "repeated-points",
    text: `${name} repeats ${count === 1 ? "a point" : `${count} points`}: once is enough.`,
    values: { landmark: name, count },
  };
}

/** The detector had put each iris behind the other eye's number. */
export function irisesExchanged(): Note<FaceNoteCode> {
  return {
    code: "irises-swapped",
    text: "Each iris lay in the other eye; they were exchanged.",
    values: {},
  };
}
