import { type Note, type Unit } from "../../units/index.js";
import { note } from "../../units/internal.js";
import type { Face } from "../face/face.js";
import { FACE_NOTES, type FaceNoteCode } from "../face/words.js";
import type { Place } from "./index-table.js";
import type { SourceOptions } from "./markup-options.js";
import type { PicturePoints } from "./markup-points.js";

/** What was done to the whole picture on the way in. */
export function notesOnPicture(options: SourceOptions): readonly Note<FaceNoteCode>[] {
  const notes: Note<FaceNoteCode>[] = [];
  if (options.coordinates === "normalised") {
    const { width, height } = options.image;
    notes.push(note(FACE_NOTES, "scaled-to-pixels", { width, height }));
  }
  if (options.mirrored === "frame") {
    notes.push(note(FACE_NOTES, "sides-swapped"));
  }
  if (options.mirrored === "frame" || options.mirrored === "coordinates") {
    notes.push(note(FACE_NOTES, "mirroring-undone"));
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
    ? note(FACE_NOTES, "point-misplaced", { landmark: name })
    : note(FACE_NOTES, "point-missing", { landmark: name, points: missing });
}

/** Neighbours at the same place were joined. */
export function repeatsLeftOut(name: string, count: number): Note<FaceNoteCode> {
  return note(FACE_NOTES, "repeated-points", { landmark: name, count });
}

/** The detector had put each iris behind the other eye's number. */
export function irisesExchanged(): Note<FaceNoteCode> {
  return note(FACE_NOTES, "irises-swapped");
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
    .map(({ landmark, instead }) => note(FACE_NOTES, "stand-in", { landmark, instead }));
}
