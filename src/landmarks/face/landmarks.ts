/**
 * Every landmark of a face: single points of each side, lines of each side, and single points on the
 * middle of the face, top down.
 *
 * `words` names it for a reader. `level` is its rough height on a face in millimetres above the eyes:
 * only the order matters.
 *
 * @example
 * ```ts
 * import { LANDMARKS } from "brow-geometry/landmarks";
 * LANDMARKS.side.exocanthion.words; // → "outer eye corner (exocanthion)"
 * ```
 */
export const LANDMARKS = {
  side: {
    /** Inner corner of the eye. */
    endocanthion: { words: "inner eye corner (endocanthion)", level: 0 },
    /** Outer corner of the eye. */
    exocanthion: { words: "outer eye corner (exocanthion)", level: 0 },
    /** Centre of the pupil, the client looking ahead. */
    pupil: { words: "pupil", level: 0 },
    /** Edge of the iris nearest the nose, level with the pupil. */
    limbusMedial: { words: "inner edge of the iris", level: 0 },
    /** Edge of the iris farthest from the nose, level with the pupil. */
    limbusLateral: { words: "outer edge of the iris", level: 0 },
    /** Most lateral point of the nose wing. */
    alare: { words: "nose wing (alare)", level: -40 },
    /** Corner of the mouth. */
    cheilion: { words: "mouth corner (cheilion)", level: -65 },
  },
  lines: {
    /** Margin of the upper lid, from endocanthion to exocanthion. */
    upperLid: { words: "upper lid" },
    /** Margin of the lower lid, from endocanthion to exocanthion. */
    lowerLid: { words: "lower lid" },
    /** The hair of the brow. */
    brow: { words: "brow", level: 20 },
  },
  midline: {
    /** Most prominent point between the brows. */
    glabella: { words: "between the brows (glabella)", level: 15 },
    /** Deepest point of the root of the nose. */
    sellion: { words: "root of the nose (sellion)", level: 0 },
    /** Tip of the nose. */
    pronasale: { words: "tip of the nose (pronasale)", level: -35 },
    /** Where the nasal septum meets the upper lip. */
    subnasale: { words: "base of the nose (subnasale)", level: -45 },
    /** Middle of the upper lip's red border. */
    labialeSuperius: { words: "upper lip (labiale superius)", level: -55 },
    /** Middle of the line between the lips. */
    stomion: { words: "middle of the mouth (stomion)", level: -65 },
    /** Lowest point of the upper lip: at stomion while the lips are closed. */
    stomionSuperius: { words: "upper lip's margin (stomion superius)", level: -64 },
    /** Highest point of the lower lip: at stomion while the lips are closed. */
    stomionInferius: { words: "lower lip's margin (stomion inferius)", level: -66 },
    /** Lowest point of the chin. */
    menton: { words: "chin (menton)", level: -110 },
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

/** Every landmark that is a single point of each side. */
export const SIDE_LANDMARKS: readonly SideLandmark[] = /* @__PURE__ */ Object.keys(
  LANDMARKS.side,
) as SideLandmark[];

/** Every landmark on the middle of the face, top down. */
export const MIDLINE_LANDMARKS: readonly MidlineLandmark[] = /* @__PURE__ */ Object.keys(
  LANDMARKS.midline,
) as MidlineLandmark[];

/** Everything that one side of a face may hold. */
export const SIDE_PARTS: readonly string[] = /* @__PURE__ */ Object.keys({
  ...LANDMARKS.side,
  ...LANDMARKS.lines,
});

/** Every landmark of a face, the sides' first. */
export const LANDMARK_NAMES: readonly LandmarkName[] = /* @__PURE__ */ Object.keys({
  ...LANDMARKS.side,
  ...LANDMARKS.lines,
  ...LANDMARKS.midline,
}) as LandmarkName[];
