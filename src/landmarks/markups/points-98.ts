import { length } from "../../units/index.js";
import { type IndexTable, leftOf, type MarkupSide, pairsDownFrom } from "./index-table.js";

const standIns = [
  { landmark: "sellion", instead: "bridge-top" },
  { landmark: "pronasale", instead: "bridge-end" },
  { landmark: "subnasale", instead: "base-middle" },
  { landmark: "menton", instead: "contour-middle" },
] as const;

type Points98 = IndexTable<"base-outer" | "base-inner", (typeof standIns)[number]["instead"]>;

/**
 * The 98 points of WFLW. The lower border of a brow is closed with the tip of its tail, which the
 * markup counts with the upper one. Uncertainty: not measured; taken to be that of 68 points.
 */
export const POINTS_98: Points98 = /* @__PURE__ */ points98();

function points98(): Points98 {
  const right: MarkupSide = {
    points: { endocanthion: 64, exocanthion: 60, pupil: 96, cheilion: 76 },
    upperLid: [64, 63, 62, 61, 60],
    lowerLid: [64, 65, 66, 67, 60],
    browUpper: [37, 36, 35, 34, 33],
    browLower: [38, 39, 40, 41, 33],
  };
  const pairs = pairsDownFrom(
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
  );
  return {
    right,
    left: leftOf(right, pairs),
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
      "base-outer": { right: 55, left: 59 },
      "base-inner": { right: 56, left: 58 },
    },
    pairs,
    middle: [16, 51, 52, 53, 54, 57, 79, 85, 90, 94],
    standIns,
    uncertainty: { default: length(3.7) },
    ringFactor: { value: 1, u: 0 },
    depth: "none",
  };
}
