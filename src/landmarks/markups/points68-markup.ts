import { mm } from "../../units/index.js";
import { type Markup, pairsDownFrom } from "./markup.js";

/** Points of the nostril row, either of which may stand for alare; both are narrower. */
export type NostrilAlare = "nostril-outer" | "nostril-inner";

/** The 68 points of the 300-W (iBUG) markup. */
export const POINTS_68: Markup<NostrilAlare> = /* @__PURE__ */ markup68(
  "points-68",
  "68 points (300-W, iBUG)",
);

/** The 68 points of a face among COCO-WholeBody's 133: the same in the same order. */
export const COCO_FACE: Markup<NostrilAlare> = /* @__PURE__ */ markup68(
  "coco-wholebody-face",
  "Face part of COCO-WholeBody, keypoints 23–90",
);

/**
 * Uncertainty: measured by us on a detector of this markup against 102 frontal faces drawn by hand,
 * 3.0–4.5 mm at the canthi. Points placed by hand are better: say so in the options.
 */
function markup68(name: string, title: string): Markup<NostrilAlare> {
  return {
    name,
    title,
    size: 68,
    right: {
      points: { endocanthion: 39, exocanthion: 36, pupil: [36, 37, 38, 39, 40, 41], cheilion: 48 },
      upperLid: [39, 38, 37, 36],
      lowerLid: [39, 40, 41, 36],
      browUpper: [21, 20, 19, 18, 17],
    },
    left: {
      points: { endocanthion: 42, exocanthion: 45, pupil: [42, 43, 44, 45, 46, 47], cheilion: 54 },
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
    pairs: pairsDownFrom(
      [0, 16, 8],
      [17, 26, 5],
      [31, 35, 2],
      [36, 45, 4],
      [40, 47, 2],
      [48, 54, 3],
      [58, 56, 2],
      [60, 64, 2],
      [67, 65, 1],
    ),
    middle: [8, 27, 28, 29, 30, 33, 51, 57, 62, 66],
    standIns: [
      { landmark: "pupil", instead: "centroid of the six points of the eye" },
      { landmark: "sellion", instead: "top of the nasal bridge" },
      { landmark: "pronasale", instead: "lower end of the nasal bridge" },
      { landmark: "subnasale", instead: "middle of the nostril row" },
      { landmark: "menton", instead: "middle of the jaw line" },
      { landmark: "brow", instead: "one line of five points, without thickness" },
    ],
    uncertainty: { default: mm(3.7) },
    ringFactor: { value: 1, u: 0 },
    depth: "none",
  };
}
