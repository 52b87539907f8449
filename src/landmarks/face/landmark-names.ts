import type { FaceSide, LandmarkName, MidlineLandmark } from "./face.js";

/** Everything that one side of a face may hold, in the order of `FaceSide`. */
export const SIDE_PARTS: readonly (keyof FaceSide<"mm">)[] = [
  "endocanthion",
  "exocanthion",
  "pupil",
  "limbusMedial",
  "limbusLateral",
  "alare",
  "cheilion",
  "upperLid",
  "lowerLid",
  "brow",
];

/** Every landmark on the middle of the face, top down. */
export const MIDLINE_LANDMARKS: readonly MidlineLandmark[] = [
  "glabella",
  "sellion",
  "pronasale",
  "subnasale",
  "labialeSuperius",
  "stomion",
  "stomionSuperius",
  "stomionInferius",
  "menton",
];

/** Every landmark of a face, the sides' first. */
export function everyLandmark(): readonly LandmarkName[] {
  return [...SIDE_PARTS, ...MIDLINE_LANDMARKS];
}
