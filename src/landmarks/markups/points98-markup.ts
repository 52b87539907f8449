import { mm } from "../../units/index.js";
import { type Markup, pairsDownFrom } from "./markup.js";

/** Points of the base of the nose, either of which may stand for alare; both are narrower. */
export type NoseBaseAlare = "base-outer" | "base-inner";

/**
 * The 98 points of the WFLW markup. The lower border of a brow is closed with the tip of its tail,
 * which the markup counts with the upper one.
 */
export const POINTS_98: Markup<NoseBaseAlare> = /* @__PURE__ */ markup98();

/** Uncertainty: not measured; taken to be that of 68 points. */
function markup98(): Markup<NoseBaseAlare> {
  return {
    name: "points-98",
    title: "98 points (WFLW)",
    size: 98,
    right: {
      points: { endocanthion: 64, exocanthion: 60, pupil: 96, cheilion: 76 },
      upperLid: [64, 63, 62, 61, 60],
      lowerLid: [64, 65, 66, 67, 60],
      browUpper: [37, 36, 35, 34, 33],
      browLower: [38, 39, 40, 41, 33],
    },
    left: {
      points: { endocanthion: 68, exocanthion: 72, pupil: 97, cheilion: 82 },
      upperLid: [68, 69, 70, 71, 72],
      lowerLid: [68, 75, 74, 73, 72],
      browUpper: [42, 43, 44, 45, 46],
      browLower: [50, 49, 48, 47, 46],
    },
    midline: {
      sellion: 51,
      pronasale: 54,
      subnasale: 57,
      labialeSuperius: 79,
      stomion: [90, 94],
      stomionSuperius: 90,
      stomionInferius: 94,
      menton: 16,
    },
    alare: {
      "base-outer": { right: 55, left: 59, instead: "outer point of the base of the nose" },
      "base-inner": { right: 56, left: 58, instead: "inner point of the base of the nose" },
    },
    pairs: pairsDownFrom(
      [0, 32, 16],
      [33, 46, 5],
      [38, 50, 4],
      [55, 59, 2],
      [60, 72, 5],
      [65, 75, 3],
      [76, 82, 3],
      [86, 84, 2],
      [88, 92, 2],
      [95, 93, 1],
      [96, 97, 1],
    ),
    middle: [16, 51, 52, 53, 54, 57, 79, 85, 90, 94],
    standIns: [
      { landmark: "sellion", instead: "top of the nasal bridge" },
      { landmark: "pronasale", instead: "lower end of the nasal bridge" },
      { landmark: "subnasale", instead: "middle of the base of the nose" },
      { landmark: "menton", instead: "middle of the face's contour" },
    ],
    uncertainty: { default: mm(3.7) },
    ringFactor: { value: 1, u: 0 },
    depth: "none",
  };
}
