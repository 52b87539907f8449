import {
  type Face,
  landmarkUncertainty,
  type MidlineLandmark,
  type PointLandmark,
} from "../../landmarks/index.js";
import { MIDLINE_LANDMARKS } from "../../landmarks/internal.js";
import type { Point, Side } from "../../units/index.js";
import { refuse, SIDES } from "../../units/internal.js";

/** Landmarks by which two captures of a face are laid over each other where nothing else is said. */
export const STABLE_LANDMARKS: readonly PointLandmark[] = [
  "endocanthion",
  "exocanthion",
  "subnasale",
  "sellion",
];

/** One landmark of both captures. */
export interface StablePair {
  readonly landmark: PointLandmark;
  readonly side?: Side;
  readonly before: Point<"mm">;
  readonly after: Point<"mm">;
  /** Variance of the difference of its two places in each axis, in square millimetres. */
  readonly variance: number;
}

/** The stable landmarks that both captures have. */
export function stablePairs(
  before: Face<"mm">,
  after: Face<"mm">,
  landmarks: readonly PointLandmark[],
): readonly StablePair[] {
  const pairs = landmarks.flatMap((landmark): readonly StablePair[] => {
    const variance =
      landmarkUncertainty(before, landmark) ** 2 + landmarkUncertainty(after, landmark) ** 2;
    if (isOnMidline(landmark)) {
      const [one, other] = [before.midline[landmark], after.midline[landmark]];
      if (one === undefined || other === undefined) return [];
      return [{ landmark, before: one, after: other, variance }];
    }
    return SIDES.flatMap((side) => {
      const [one, other] = [before[side][landmark], after[side][landmark]];
      if (one === undefined || other === undefined) return [];
      return [{ landmark, side, before: one, after: other, variance }];
    });
  });
  if (pairs.length >= 2) return pairs;
  const found = pairs.map(({ landmark, side = "midline" }) => `${side}.${landmark}`);
  const need = "at least two points that both captures have";
  refuse("missing-landmark", "compareCaptures", landmarks.join(", "), found, need);
}

function isOnMidline(landmark: PointLandmark): landmark is MidlineLandmark {
  return (MIDLINE_LANDMARKS as readonly PointLandmark[]).includes(landmark);
}
