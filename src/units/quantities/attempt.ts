import { GeometryError, type GeometryErrorCode } from "./geometry-error.js";

/** An answer, or why there is none. */
export type Attempt<Answer> =
  | { readonly ok: true; readonly answer: Answer }
  | { readonly ok: false; readonly refusal: GeometryError };

/**
 * Asks a question to which "no" is an answer too: what a finger drags where no brow can be, a face without irises.
 * Every function of this library can be asked so; a fault that is no refusal is thrown as ever.
 *
 * @param refusals the codes that are answers; left out: all
 *
 * @example
 * ```ts
 * import { type Face, scaleFromIris } from "brow-geometry";
 * import { attempt } from "brow-geometry/units";
 * const face: Face<"px"> = { right: {}, left: {}, midline: {} };
 * const scale = attempt(() => scaleFromIris(face));
 * scale.ok; // → false
 * !scale.ok && scale.refusal.code; // → "missing-landmark"
 * attempt(() => 3); // → { ok: true, answer: 3 }
 * ```
 */
export function attempt<Answer>(
  ask: () => Answer,
  refusals?: readonly GeometryErrorCode[],
): Attempt<Answer> {
  try {
    return { ok: true, answer: ask() };
  } catch (refusal) {
    if (!(refusal instanceof GeometryError)) throw refusal;
    if (refusals !== undefined && !refusals.includes(refusal.code)) throw refusal;
    return { ok: false, refusal };
  }
}
