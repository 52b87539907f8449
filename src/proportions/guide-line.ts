import type { Line } from "../geometry/index.js";
import { lineBetween } from "../geometry/internal.js";
import {
  type Face,
  type FaceSide,
  type GuideConvention,
  GUIDES,
  type Mark,
  type SideLandmark,
  type StandIn,
} from "../landmarks/index.js";
import type { GuideRule } from "../landmarks/internal.js";
import { flatPoint, type Point, type Side } from "../units/index.js";
import {
  keysOf,
  refuse,
  refusingAs,
  requireNames,
  requirePositive,
  requireWord,
  SIDES,
} from "../units/internal.js";
import { verticalAt } from "./upwards.js";

/**
 * Usual `"eye-width-share"`, in eye widths from endocanthion: (100 · 0.978 + 105 · 0.929) / 205, the mean
 * of both groups of Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239.
 */
export const ARCH_EYE_WIDTH_SHARE = 0.953;

/** What {@link guideLine} leaves to the caller. */
export interface GuideOptions {
  /** Place of `"eye-width-share"` in eye widths; default 0.953. */
  readonly share?: number;
}

/**
 * The line on which a brow starts, peaks or ends by a convention, as `GUIDES` says it.
 *
 * @throws GeometryError `missing-landmark`; `coincident-points` where two landmarks give no line;
 * `not-finite`, `out-of-range` where the share is not positive
 *
 * @example
 * ```ts
 * import { guideLine, mm } from "brow-geometry";
 * const left = { alare: mm([15, -40]), endocanthion: mm([17, 0]), exocanthion: mm([45, 0]) };
 * const face = { right: {}, left, midline: {} };
 * guideLine(face, "left", "endocanthion-vertical").line; // → { through: [17, 0], direction: [0, 1] }
 * guideLine(face, "left", "eye-width-share", { share: 0.75 }).line.through; // → [38, 0]
 * guideLine(face, "left", "alare-through-exocanthion").line; // → { through: [15, -40], direction: [0.6, 0.8] }
 * ```
 */
export function guideLine<Convention extends GuideConvention, Which extends Side>(
  face: FaceForGuide<NoInfer<Convention>, Which>,
  side: Which,
  convention: Convention,
  options: GuideOptions = {},
): Guide<Convention> {
  return refusingAs("guideLine", () => {
    requireNames("options", options, ["share"]);
    const { share = ARCH_EYE_WIDTH_SHARE } = options;
    requirePositive("options.share", share);
    requireLandmarksOn(face, [side], convention);
    return guideOn(face, side, convention, share);
  });
}

/** A guide on a side that has its landmarks. */
export function guideOn<Convention extends GuideConvention, Which extends Side>(
  face: FaceForGuide<NoInfer<Convention>, Which>,
  side: Which,
  convention: Convention,
  share: number,
): Guide<Convention> {
  const { mark, through: from }: GuideRule = GUIDES[convention];
  const line = sightLine(convention, face[side], share);
  const standIns = (face.standIns ?? []).filter(({ landmark }) =>
    from.some((name) => name === landmark),
  );
  return { mark, convention, side, line, from, standIns };
}

/** The line of a guide alone, on a side that has its landmarks. */
export function sightLine(
  convention: GuideConvention,
  landmarks: FaceSide<"mm">,
  share: number,
): Line<"mm"> {
  const { drawn, through }: GuideRule = GUIDES[convention];
  const at = (name: SideLandmark): Point<"mm"> => landmarks[name] as Point<"mm">;
  switch (drawn) {
    case "vertical":
      return verticalAt(at(through[0]));
    case "line":
      return lineBetween(at(through[0]), at(through[1]), through[1]);
    case "share": {
      const [from, to] = [at(through[0]), at(through[1])];
      return verticalAt(flatPoint(from[0] + share * (to[0] - from[0]), from[1]));
    }
  }
}

/** A line of sight on the frontal view that places one mark of one brow. */
export interface Guide<Convention extends GuideConvention = GuideConvention> {
  readonly mark: Mark;
  readonly convention: Convention;
  readonly side: Side;
  /** Rises from the landmark named first in `from`. */
  readonly line: Line<"mm">;
  /** The landmarks it was drawn from. */
  readonly from: readonly SideLandmark[];
  /** Those of them that the face's source only approximates. */
  readonly standIns: readonly StandIn[];
}

/** A face in which the landmarks of a guide are known on the given sides. */
export type FaceForGuide<
  Convention extends GuideConvention,
  Which extends Side = Side,
> = Face<"mm"> & {
  readonly [Name in Which]: Required<
    Pick<FaceSide<"mm">, (typeof GUIDES)[Convention]["through"][number]>
  >;
};

/** Narrows a face to one that has the landmarks of a guide on both sides. */
export function requireGuideLandmarks<Convention extends GuideConvention>(
  face: Face<"mm">,
  convention: Convention,
): FaceForGuide<Convention> {
  requireLandmarksOn(face, SIDES, convention);
  return face as FaceForGuide<Convention>;
}

/** Refuses a face without a guide's landmarks on the given sides, naming every one that is missing. */
function requireLandmarksOn(
  face: Face<"mm">,
  sides: readonly Side[],
  convention: GuideConvention,
): void {
  requireWord("convention", convention, keysOf(GUIDES));
  const missing = sides.flatMap((side) =>
    GUIDES[convention].through
      .filter((name) => face[side][name] === undefined)
      .map((name) => `${side}.${name}`),
  );
  if (missing.length > 0) {
    refuse("missing-landmark", missing.join(", "), undefined, `to be placed, for ${convention}`);
  }
}
