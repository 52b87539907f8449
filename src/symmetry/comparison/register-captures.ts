import { distance, fitSimilarity, type Similarity } from "../../geometry/index.js";
import {
  type Face,
  landmarkUncertainty,
  type MidlineLandmark,
  type PointLandmark,
} from "../../landmarks/index.js";
import { length, type Length, type Note, type Point, type Side } from "../../units/index.js";
import {
  chiSquareQuantile,
  refuse,
  requireUncertainty,
  SIDES,
  toDegrees,
  toRadians,
} from "../../units/internal.js";
import { registrationNote, type RegistrationNoteCode } from "./notes.js";
import { MIDLINE_LANDMARKS } from "../../landmarks/internal.js";

/** A stable landmark, and how far its two places lie apart once the captures lie over each other. */
export interface StablePoint {
  readonly landmark: PointLandmark;
  readonly side?: Side;
  readonly apart: Length<"mm">;
}

/** How one capture was laid over another, by what does not move. */
export interface Registration {
  /** Brings the later capture onto the earlier one. */
  readonly similarity: Similarity<"mm", "mm">;
  readonly stable: readonly StablePoint[];
  /**
   * How far the stable points lie apart, as a multiple of what their uncertainties explain; absent
   * where two points leave nothing to compare.
   */
  readonly disagreement?: number;
  /** False where chance explains so much in one of twenty cases only: something else has changed. */
  readonly consistent: boolean;
  /** Present where it is not consistent. */
  readonly note?: Note<RegistrationNoteCode>;
  /** Standard uncertainty of a shift of the whole in each axis. */
  readonly shiftU: Length<"mm">;
  /** Standard uncertainty of its turn about the stable points' centroid, in degrees. */
  readonly turnU: number;
  /** Relative standard uncertainty of its scale; where that is fixed, what was said of it. */
  readonly stretchU: number;
}

/** Share of cases in which stable points that did not move are believed. */
const CONFIDENCE = 0.95;

/**
 * Lays a capture over an earlier one by its stable landmarks, each with its own uncertainty. Where they
 * disagree more than that explains, all uncertainties are widened by as much.
 */
export function registerCaptures(
  pairs: readonly StablePair[],
  scale: "free" | "fixed",
  scaleU = 0,
): Registration {
  requireUncertainty("scaleU", scaleU);
  const weights = pairs.map(({ variance }) => 1 / variance);
  const { similarity, residuals, squares } = fitSimilarity(
    pairs.map(({ after }) => after),
    pairs.map(({ before }) => before),
    { weights, ...(scale === "fixed" ? { factor: 1 } : {}) },
  );
  const spare = 2 * pairs.length - (scale === "free" ? 4 : 3);
  const disagreement = spare > 0 ? Math.sqrt(squares / spare) : undefined;
  const consistent = spare <= 0 || squares <= chiSquareQuantile(CONFIDENCE, spare);
  const widened = consistent ? 1 : (disagreement ?? 1);
  const turn = widened / Math.sqrt(spreadAbout(similarity.to, pairs));
  const stable = pairs.map(({ landmark, side }, index) => ({
    landmark,
    ...(side === undefined ? {} : { side }),
    apart: residuals[index] as Length<"mm">,
  }));
  return {
    similarity,
    stable,
    ...(disagreement === undefined ? {} : { disagreement }),
    consistent,
    ...(consistent ? {} : { note: disagreementNote(stable, widened) }),
    shiftU: length(widened / Math.sqrt(weights.reduce((sum, weight) => sum + weight, 0))),
    turnU: toDegrees(turn),
    stretchU: scale === "free" ? turn : scaleU,
  };
}

function disagreementNote(
  stable: readonly StablePoint[],
  times: number,
): Note<RegistrationNoteCode> {
  const worst = stable.reduce((most, point) => (point.apart > most.apart ? point : most));
  const { landmark, side, apart } = worst;
  return registrationNote("stable-points-disagree", {
    times,
    landmark:
      side === undefined ? landmark : registrationNote("landmark-of-side", { side, landmark }),
    apart,
  });
}

/** Standard uncertainty of a place, across and up, that comes from the registration. */
export function registrationU(
  at: Point<"mm">,
  { similarity, shiftU, turnU, stretchU }: Registration,
): { readonly across: number; readonly up: number } {
  const [x, y] = [at[0] - similarity.to[0], at[1] - similarity.to[1]];
  const turn = toRadians(turnU);
  return {
    across: Math.hypot(shiftU, turn * y, stretchU * x),
    up: Math.hypot(shiftU, turn * x, stretchU * y),
  };
}

function spreadAbout(centre: Point<"mm">, pairs: readonly StablePair[]): number {
  return pairs.reduce(
    (sum, { before, variance }) => sum + distance(before, centre) ** 2 / variance,
    0,
  );
}

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
  refuse("missing-landmark", landmarks.join(", "), found, need);
}

function isOnMidline(landmark: PointLandmark): landmark is MidlineLandmark {
  return (MIDLINE_LANDMARKS as readonly PointLandmark[]).includes(landmark);
}
