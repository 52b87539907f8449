import { distance, type MirrorPair } from "../../geometry/index.js";
import {
  type Face,
  landmarkUncertainty,
  type MidlineLandmark,
  type PointLandmark,
  type SideLandmark,
} from "../../landmarks/index.js";
import { type Length, length, type Unit } from "../../units/index.js";

/** A pair or a midline landmark as the fit sees it. */
export interface NamedPair<U extends Unit> extends MirrorPair<U> {
  readonly name: PointLandmark;
  readonly u: Length<U>;
}

/** What pairs count for: a bent nose takes its wings along; brows are what the line is wanted for. */
const PAIR_WEIGHTS: readonly (readonly [SideLandmark, number])[] = [
  ["endocanthion", 1],
  ["exocanthion", 1],
  ["pupil", 1],
  ["cheilion", 1],
  ["alare", 0.25],
];

const MIDDLE_WEIGHTS: readonly (readonly [MidlineLandmark, number])[] = [
  ["glabella", 1],
  ["sellion", 1],
  ["labialeSuperius", 1],
  ["stomion", 1],
  ["pronasale", 0.25],
  ["subnasale", 0.25],
];

/** Names of the pairs and of the landmarks of the middle that a midline may be fitted to. */
export const MIDLINE_PAIRS: readonly SideLandmark[] = /* @__PURE__ */ PAIR_WEIGHTS.map(
  ([name]) => name,
);
export const MIDLINE_POINTS: readonly MidlineLandmark[] = /* @__PURE__ */ MIDDLE_WEIGHTS.map(
  ([name]) => name,
);

/** Faces are less symmetric than landmarks are sharp: no spread is under this share of their width. */
export const LEAST_SPREAD = 0.01;

/** The landmarks a midline is fitted to, those that the face has. */
export function namedPairs<U extends Unit>(
  face: Face<U>,
  width: Length<U>,
): readonly NamedPair<U>[] {
  const pairs: NamedPair<U>[] = [];
  for (const [name, weight] of PAIR_WEIGHTS) {
    const one = face.right[name];
    const other = face.left[name];
    if (one === undefined || other === undefined) continue;
    const u = uncertaintyOf(face, name, width);
    pairs.push({ name, one, other, weight, u, spread: spreadOf(u, width) });
  }
  for (const [name, weight] of MIDDLE_WEIGHTS) {
    const one = face.midline[name];
    if (one === undefined) continue;
    const u = uncertaintyOf(face, name, width);
    pairs.push({ name, one, weight, u, spread: spreadOf(u, width) });
  }
  return pairs;
}

/** How far off symmetry a landmark may lie, in the face's own unit. */
function spreadOf<U extends Unit>(u: Length<U>, width: Length<U>): Length<U> {
  return length(Math.max(u, LEAST_SPREAD * width));
}

/** Standard uncertainty of a landmark in each axis, in the unit of a face so wide. */
export function uncertaintyOf<U extends Unit>(
  face: Face<U>,
  name: PointLandmark,
  width: Length<U>,
): Length<U> {
  return length((width * landmarkUncertainty(face, name)) / TYPICAL_WIDTH);
}

/** Distance of the outer eye corners that turns millimetres into shares of a face of unknown scale. */
export const TYPICAL_WIDTH = 90;

/** Means of women (inner to outer corners: canthal index 43.3) and adults (pupils: 63 mm). */
const WIDTH_PER: readonly (readonly [SideLandmark, number])[] = [
  ["exocanthion", 1],
  ["pupil", TYPICAL_WIDTH / 63],
  ["endocanthion", 1 / 0.433],
];

/** Distance between the outer eye corners, or what another pair of the eyes says of it. */
export function biocularWidth<U extends Unit>(face: Face<U>): Length<U> | undefined {
  for (const [name, factor] of WIDTH_PER) {
    const right = face.right[name];
    const left = face.left[name];
    if (right !== undefined && left !== undefined) return length(factor * distance(right, left));
  }
  return undefined;
}
