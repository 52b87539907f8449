import { measured, mm } from "../units/index.js";
import type { Markup } from "./markup.js";

/** Points of the nostril row, any of which may stand for alare; all are narrower. */
export type NostrilAlare = "nostril-outer" | "nostril-inner";

/**
 * The 68 points of the 300-W (iBUG) markup.
 *
 * Uncertainty: measured by us on a detector of this markup against 102 frontal faces drawn by hand:
 * 3.0–4.5 mm at the canthi. Points placed by hand are better: say so in the options.
 */
export const POINTS_68: Markup<NostrilAlare> = {
  name: "points-68",
  size: 68,
  right: {
    points: {
      endocanthion: 39,
      exocanthion: 36,
      pupil: [36, 37, 38, 39, 40, 41],
      cheilion: 48,
    },
    upperLid: [39, 38, 37, 36],
    lowerLid: [39, 40, 41, 36],
    browUpper: [21, 20, 19, 18, 17],
  },
  left: {
    points: {
      endocanthion: 42,
      exocanthion: 45,
      pupil: [42, 43, 44, 45, 46, 47],
      cheilion: 54,
    },
    upperLid: [42, 43, 44, 45],
    lowerLid: [42, 47, 46, 45],
    browUpper: [22, 23, 24, 25, 26],
  },
  midline: {
    sellion: 27,
    pronasale: 30,
    subnasale: 33,
    labialeSuperius: 51,
    stomion: [62, 66],
    stomionSuperius: 62,
    stomionInferius: 66,
    menton: 8,
  },
  alare: {
    "nostril-outer": { right: 31, left: 35, instead: "outer point of the nostril row" },
    "nostril-inner": { right: 32, left: 34, instead: "inner point of the nostril row" },
  },
  usualAlare: "nostril-outer",
  standIns: [
    { landmark: "pupil", instead: "centroid of the six points of the eye" },
    { landmark: "sellion", instead: "point 27, the top of the nasal bridge" },
    { landmark: "pronasale", instead: "point 30, the lower end of the nasal bridge" },
    { landmark: "subnasale", instead: "point 33, the middle of the nostril row" },
    { landmark: "menton", instead: "point 8, the middle of the jaw line" },
    { landmark: "brow", instead: "one line of five points, without thickness" },
  ],
  uncertainty: { default: mm(3.7) },
  ringFactor: measured(1, 0),
};
