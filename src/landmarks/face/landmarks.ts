import type { Side } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";

/**
 * Every landmark of a face: single points of each side, lines of each side, and single points on the
 * middle of the face, top down.
 *
 * `level` is its rough height on a face in millimetres above the eyes: only the order matters.
 *
 * @example
 * ```ts
 * import { LANDMARKS } from "brow-geometry/landmarks";
 * LANDMARKS.midline.menton.level; // → -110
 * ```
 */
export const LANDMARKS = {
  side: {
    /** Inner corner of the eye. */
    endocanthion: { level: 0 },
    /** Outer corner of the eye. */
    exocanthion: { level: 0 },
    /** Centre of the pupil, the client looking ahead. */
    pupil: { level: 0 },
    /** Edge of the iris nearest the nose, level with the pupil. */
    limbusMedial: { level: 0 },
    /** Edge of the iris farthest from the nose, level with the pupil. */
    limbusLateral: { level: 0 },
    /** Most lateral point of the nose wing. */
    alare: { level: -40 },
    /** Corner of the mouth. */
    cheilion: { level: -65 },
  },
  lines: {
    /** Margin of the upper lid, from endocanthion to exocanthion. */
    upperLid: { level: 5 },
    /** Margin of the lower lid, from endocanthion to exocanthion. */
    lowerLid: { level: -5 },
    /** The hair of the brow. */
    brow: { level: 20 },
  },
  midline: {
    /** Most prominent point between the brows. */
    glabella: { level: 15 },
    /** Deepest point of the root of the nose. */
    sellion: { level: 0 },
    /** Tip of the nose. */
    pronasale: { level: -35 },
    /** Where the nasal septum meets the upper lip. */
    subnasale: { level: -45 },
    /** Middle of the upper lip's red border. */
    labialeSuperius: { level: -55 },
    /** Middle of the line between the lips. */
    stomion: { level: -65 },
    /** Lowest point of the upper lip: at stomion while the lips are closed. */
    stomionSuperius: { level: -64 },
    /** Highest point of the lower lip: at stomion while the lips are closed. */
    stomionInferius: { level: -66 },
    /** Lowest point of the chin. */
    menton: { level: -110 },
  },
} as const;

/** Names of the single points of one side of the face. */
export type SideLandmark = keyof (typeof LANDMARKS)["side"];

/** Names of the points on the middle of the face. */
export type MidlineLandmark = keyof (typeof LANDMARKS)["midline"];

/** Name of a landmark that is a single point. */
export type PointLandmark = SideLandmark | MidlineLandmark;

/** Name of any landmark; `brow` and the lids stand for each of their points. */
export type LandmarkName = PointLandmark | keyof (typeof LANDMARKS)["lines"];

/** Where a landmark stands in a face, such as `"right.alare"` or `"left.brow.upper"`. */
export type LandmarkPath =
  | `${Side}.${SideLandmark | "upperLid" | "lowerLid" | "brow.upper" | "brow.lower"}`
  | `midline.${MidlineLandmark}`;

/** Every landmark that is a single point of each side. */
export const SIDE_LANDMARKS: readonly SideLandmark[] = /* @__PURE__ */ keysOf(LANDMARKS.side);

/** Every landmark on the middle of the face, top down. */
export const MIDLINE_LANDMARKS: readonly MidlineLandmark[] = /* @__PURE__ */ keysOf(
  LANDMARKS.midline,
);

/** Everything that one side of a face may hold. */
export const SIDE_PARTS: readonly LandmarkName[] = /* @__PURE__ */ partsOfSide();

/** Every landmark of a face, the sides' first. */
export const LANDMARK_NAMES: readonly LandmarkName[] =
  /* @__PURE__ */ partsOfSide().concat(MIDLINE_LANDMARKS);

function partsOfSide(): readonly LandmarkName[] {
  return keysOf({ ...LANDMARKS.side, ...LANDMARKS.lines });
}
