import { GeometryError, type GeometryErrorCode } from "../units/index.js";

/** Why landmarks in their order may fix no midline. */
export const NO_MIDLINE: readonly GeometryErrorCode[] = [
  "missing-landmark",
  "coincident-points",
  "ill-conditioned",
  "inconsistent",
];

export type Attempt<Answer> = { readonly answer: Answer } | { readonly refused: GeometryErrorCode };

/** Asks a question whose refusals, as far as they are named, are findings rather than errors. */
export function attempt<Answer>(
  ask: () => Answer,
  refusals: readonly GeometryErrorCode[],
): Attempt<Answer> {
  try {
    return { answer: ask() };
  } catch (error) {
    if (error instanceof GeometryError && refusals.includes(error.code)) {
      return { refused: error.code };
    }
    throw error;
  }
}
