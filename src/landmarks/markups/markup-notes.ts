import { type Note, type Unit } from "../../units/index.js";
import type { Face } from "../face/face.js";
import { faceNote, type FaceNoteCode } from "../face/notes.js";
import type { Place } from "./index-table.js";
import type { SourceOptions } from "./markup-options.js";
import type { PicturePoints } from "./markup-points.js";

/** What was done to the whole picture on the way in. */
export function notesOnPicture(options: SourceOptions): readonly Note<FaceNoteCode>[] {
  const notes: Note<FaceNoteCode>[] = [];
  if (options.coordinates === "normalised") {
    const { width, height } = options.image;
    notes.push(faceNote("scaled-to-pixels", { width, height }));
  }
  if (options.mirrored === "frame") {
    notes.push(faceNote("sides-swapped"));
  }
  if (options.mirrored === "frame" || options.mirrored === "coordinates") {
    notes.push(faceNote("mirroring-undone"));
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
    ? faceNote("point-misplaced", { landmark: name })
    : faceNote("point-missing", { landmark: name, points: missing });
}

/** Neighbours at the same place were joined. */
export function repeatsLeftOut(name: string, count: number): Note<FaceNoteCode> {
  return faceNote("repeated-points", { landmark: name, count });
}

/** The detector had put each iris behind the other eye's number. */
export function irisesExchanged(): Note<FaceNoteCode> {
  return faceNote("irises-swapped");
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
    .map(({ landmark, instead }) => faceNote("stand-in", { landmark, instead }));
}
