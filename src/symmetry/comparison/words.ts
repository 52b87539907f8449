/** Codes of the notes that {@link halfFaces} may make. */
export type HalfFacesNoteCode = keyof typeof HALF_FACES_NOTES;

/** What uneven halves of a face may mean. */
export const HALF_FACES_NOTES = {
  "half-faces-differ":
    "The halves of the face differ by {difference:1} mm in width: the head is turned by about {yaw:0}°, or the face is that uneven. The photo cannot tell, and no dot is moved for it.",
} as const;

/** Codes of the notes that a {@link Registration} may make. */
export type RegistrationNoteCode = keyof typeof REGISTRATION_NOTES;

/** What landmarks that moved against each other mean. */
export const REGISTRATION_NOTES = {
  "stable-points-disagree":
    "Landmarks that should not move lie {times:1} times as far apart as their uncertainties explain, the {landmark} most: {apart:1} mm. Something else has changed, such as the expression or the camera's distance.",
} as const;

/** Where a dot went or is to go, in the artist's words. */
export const WAYS = {
  up: "up {by}",
  down: "down {by}",
  outward: "outward {by}",
  inward: "inward {by}",
} as const;
