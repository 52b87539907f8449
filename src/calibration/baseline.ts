import type { Measured, Note, ScaleNoteCode } from "../units/index.js";
import { refuse } from "../units/internal.js";

/** A length of known size as it is seen in the photo, in pixels, with notes on it. */
export interface SeenWidth {
  readonly seen: Measured;
  readonly notes: readonly Note<ScaleNoteCode>[];
}

/** A stretch shorter than this many of its own standard uncertainties fixes no length or direction. */
const LEAST_UNCERTAINTIES = 5;

/** Refuses a stretch of the photo too short, for its uncertainty, to carry a scale. */
export function requireBaseline(field: string, value: unknown, stretch: Measured): void {
  if (stretch.value > 0 && stretch.value >= LEAST_UNCERTAINTIES * stretch.u) return;
  const need = `a stretch over ${LEAST_UNCERTAINTIES} times its uncertainty`;
  refuse("ill-conditioned", field, value, need);
}
