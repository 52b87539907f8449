import type { PointLandmark } from "../../landmarks/index.js";
import type { Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type Numbers } from "../../units/internal.js";

/** Codes of the notes that {@link halfFaces} may make. */
export type HalfFacesNoteCode = keyof HalfFacesNotes;

/** What uneven halves of a face may mean: a difference in width, and the turn that would explain it. */
export interface HalfFacesNotes {
  readonly "half-faces-differ": Numbers<"difference" | "yaw">;
}

export const halfFacesNote: NoteMaker<HalfFacesNotes> = /* @__PURE__ */ noteMaker();

/** Codes of the notes that a {@link Registration} may make. */
export type RegistrationNoteCode = keyof RegistrationNotes;

/** What landmarks that moved against each other mean. */
export interface RegistrationNotes {
  readonly "stable-points-disagree": Numbers<"times" | "apart"> & {
    readonly landmark: PointLandmark | Note<"landmark-of-side">;
  };
}

/** What notes of a registration hold within them. */
export interface RegistrationNoteParts {
  readonly "landmark-of-side": { readonly side: Side; readonly landmark: PointLandmark };
}

export const registrationNote: NoteMaker<RegistrationNotes & RegistrationNoteParts> =
  /* @__PURE__ */ noteMaker();
