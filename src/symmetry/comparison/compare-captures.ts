import { transform } from "../../geometry/index.js";
import {
  type BrowDots,
  type Dot,
  type Face,
  landmarkUncertainty,
  type PointLandmark,
} from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import {
  decide,
  type Decision,
  type DecisionOptions,
  eachSide,
  type Length,
  length,
  type Measured,
  measured,
  type Side,
  type Sides,
  type ToleranceSet,
  WORKING_TOLERANCES,
} from "../../units/index.js";
import { refusingAs, requireUncertainty } from "../../units/internal.js";
import {
  registerCaptures,
  type Registration,
  registrationU,
  STABLE_LANDMARKS,
  stablePairs,
} from "./register-captures.js";
import { placeOnSide } from "../mirroring/side-place.js";

/** A face and the dots of its brows at one time, in its own face space. */
export interface DottedFace {
  readonly face: Face<"mm">;
  readonly dots: Sides<BrowDots<"mm">>;
}

/** How {@link compareCaptures} works. */
export interface CaptureComparisonOptions extends DecisionOptions {
  /** Default: inner and outer eye corners, subnasale and sellion. */
  readonly stable?: readonly PointLandmark[];
  /** `"free"` (default): the captures may differ in scale; `"fixed"`: both scales are trusted. */
  readonly scale?: "free" | "fixed";
  /**
   * Relative standard uncertainty of one fixed scale over the other; default 0. Two scales by iris of
   * the same client share her iris, two by ruler share nothing.
   */
  readonly scaleU?: number;
  /**
   * Standard uncertainty in each axis of the way from a dot to its other place, but for how the captures lie
   * over each other. Default: the uncertainties of both brows together.
   */
  readonly dotU?: Length<"mm">;
  /** Whose `position` limits each displacement. Default {@link WORKING_TOLERANCES}: 1 mm. */
  readonly tolerances?: ToleranceSet;
}

/** Where a dot went, in the artist's words. */
export type Way = "up" | "down" | "outward" | "inward";

/** How far a dot moved from one capture to the other, in the axes of the earlier face. */
export interface Displacement {
  /** Parallel to the midline, positive towards the forehead. */
  readonly up: Measured<Length<"mm">>;
  /** Across, positive away from the midline. */
  readonly outward: Measured<Length<"mm">>;
  /** The ways in which it moved by more than twice the uncertainty. */
  readonly ways: readonly Way[];
  /** Whether either way keeps the tolerance; absent where the set has none for positions. */
  readonly decisions?: { readonly up: Decision; readonly outward: Decision };
}

/** What changed between two captures of the same face. */
export interface CaptureComparison {
  readonly registration: Registration;
  /** The dots that both captures have. */
  readonly displacements: Sides<{ readonly [Name in Dot]?: Displacement }>;
}

/**
 * Compares the same face at two times: upright and lying, relaxed and raised, planned and drawn,
 * fresh and healed.
 *
 * The later capture is laid over the earlier one by landmarks that do not move, never mirrored; then
 * the dots are compared in the axes of the earlier face. Where the stable landmarks disagree more
 * than their uncertainties explain, `registration.note` says so and every uncertainty grows.
 *
 * @throws GeometryError `missing-landmark` where the captures share fewer than two stable points, and
 * what `fitSimilarity` throws
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { compareCaptures } from "brow-geometry/symmetry";
 * const capture = (up: number) => ({
 *   face: {
 *     right: { endocanthion: mm([-16, 0]), exocanthion: mm([-44, 1]) },
 *     left: { endocanthion: mm([16, 0]), exocanthion: mm([44, 0]) },
 *     midline: { subnasale: mm([0, -44]) },
 *   },
 *   dots: { right: {}, left: { tailEnd: mm([57, 18 + up]) } },
 * });
 * const { displacements, registration } = compareCaptures(capture(0), capture(2.5));
 * registration.consistent; // → true
 * displacements.left.tailEnd?.up.value; // → 2.5
 * displacements.left.tailEnd?.ways; // → ["up"]
 * displacements.left.tailEnd?.decisions?.up.outcome; // → "outside"
 * ```
 */
export function compareCaptures(
  before: DottedFace,
  after: DottedFace,
  options: CaptureComparisonOptions = {},
): CaptureComparison {
  return refusingAs("compareCaptures", () => {
    const { stable = STABLE_LANDMARKS, scale = "free", tolerances = WORKING_TOLERANCES } = options;
    const pairs = stablePairs(before.face, after.face, stable);
    const registration = registerCaptures(pairs, scale, options.scaleU);
    const {
      dotU: placementU = length(
        Math.hypot(
          landmarkUncertainty(before.face, "brow"),
          landmarkUncertainty(after.face, "brow"),
        ),
      ),
    } = options;
    requireUncertainty("dotU", placementU);
    const limits = tolerances.tolerances.position?.limits;
    const displacementOf = (dot: Dot, side: Side): Displacement | undefined => {
      const [from, seen] = [before.dots[side][dot], after.dots[side][dot]];
      if (from === undefined || seen === undefined) return undefined;
      const to = transform(seen, registration.similarity);
      const u = registrationU(to, registration);
      const [start, end] = [placeOnSide(from, side), placeOnSide(to, side)];
      const up = shiftOf(end.height - start.height, Math.hypot(placementU, u.up));
      const outward = shiftOf(end.distance - start.distance, Math.hypot(placementU, u.across));
      const ways = [...wayOf(up, "up", "down"), ...wayOf(outward, "outward", "inward")];
      if (limits === undefined) return { up, outward, ways };
      const decisions = {
        up: decide(up, limits, options),
        outward: decide(outward, limits, options),
      };
      return { up, outward, ways, decisions };
    };
    const displacements = eachSide((side) => {
      const found: { [Name in Dot]?: Displacement } = {};
      for (const dot of DOT_NAMES) {
        const displacement = displacementOf(dot, side);
        if (displacement !== undefined) found[dot] = displacement;
      }
      return found;
    });
    return { registration, displacements };
  });
}

function shiftOf(value: number, u: number): Measured<Length<"mm">> {
  return measured(length(value), length(u));
}

function wayOf({ value, u }: Measured, positive: Way, negative: Way): readonly Way[] {
  if (Math.abs(value) <= 2 * u) return [];
  return [value > 0 ? positive : negative];
}
