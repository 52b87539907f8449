import type { GeometryErrorCode } from "../units/index.js";

/** Why landmarks in their order may fix no midline. */
export const NO_MIDLINE: readonly GeometryErrorCode[] = [
  "missing-landmark",
  "coincident-points",
  "ill-conditioned",
  "inconsistent",
];
