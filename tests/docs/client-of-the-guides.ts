import { mm, type PlannableFace, type Polyline, type Side } from "brow-geometry";

/** Half of an outline, counted from the midline outward: from there, and above the inner eye corners. */
type Places = readonly (readonly [outward: number, up: number])[];

const UPPER_LID: Places = [
  [16.2, 0],
  [18.5, 1.9],
  [22, 4],
  [26, 5.4],
  [31, 6],
  [36, 5.4],
  [40, 3.8],
  [44.4, 1],
];
const LOWER_LID: Places = [
  [16.2, 0],
  [20, -1.7],
  [25, -3.3],
  [31, -4],
  [37, -3.2],
  [41, -1.4],
  [44.4, 1],
];
const UPPER_BORDER: Places = [
  [16, 16.2],
  [20, 17.4],
  [25, 18.9],
  [30, 20.3],
  [35, 21.6],
  [40, 22.7],
  [44, 23.1],
  [47, 22.3],
  [50, 20.9],
  [52.5, 19],
  [55.6, 16.4],
];
const LOWER_BORDER: Places = [
  [16, 9.6],
  [20, 11],
  [25, 12.8],
  [30, 14.5],
  [35, 16.1],
  [40, 17.5],
  [44, 18.2],
  [47, 18.1],
  [50, 17.6],
  [52.5, 16.9],
  [55.6, 16.1],
];

/** The client of the guides' pictures, invented: the right brow grows lower and nearer to the midline. */
export function clientOfTheGuides(): PlannableFace {
  return {
    right: sideOf("right", { outward: -0.7, up: -1.8 }),
    left: sideOf("left", { outward: 0.6, up: 0.3 }),
    midline: { glabella: mm([0, 16]), sellion: mm([0, 2]), subnasale: mm([0, -46]) },
  };
}

function sideOf(side: Side, brow: { outward: number; up: number }): PlannableFace["left"] {
  const sign = side === "right" ? -1 : 1;
  const at = (outward: number, up: number) => mm([sign * outward, up]);
  const along = (places: Places): Polyline<"mm"> => places.map(([outward, up]) => at(outward, up));
  const grown = (places: Places): Polyline<"mm"> =>
    places.map(([outward, up]) => at(outward + brow.outward, up + brow.up));
  return {
    endocanthion: at(16.2, 0),
    exocanthion: at(44.4, 1),
    pupil: at(31.2, 0.9),
    limbusMedial: at(25.3, 0.9),
    limbusLateral: at(37.1, 0.9),
    alare: at(16.1, -39),
    cheilion: at(25, -66),
    upperLid: along(UPPER_LID),
    lowerLid: along(LOWER_LID),
    brow: { upper: grown(UPPER_BORDER), lower: grown(LOWER_BORDER) },
  };
}
