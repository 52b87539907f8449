import { type Face, type FaceSide, type SideLandmark, type StandIn } from "../landmarks/index.js";
import type { Line } from "../geometry/index.js";
import type { Side } from "../units/index.js";

/**
 * The landmarks that each guide reads, on its own side of the face.
 *
 * @example
 * ```ts
 * import { GUIDE_LANDMARKS } from "brow-geometry";
 * GUIDE_LANDMARKS["alare-through-exocanthion"]; // → ["alare", "exocanthion"]
 * ```
 */
export const GUIDE_LANDMARKS = {
  "alare-vertical": ["alare"],
  "endocanthion-vertical": ["endocanthion"],
  "lateral-limbus-vertical": ["limbusLateral"],
  "alare-through-pupil": ["alare", "pupil"],
  "eye-width-share": ["endocanthion", "exocanthion"],
  "exocanthion-vertical": ["exocanthion"],
  "alare-through-lateral-limbus": ["alare", "limbusLateral"],
  "alare-through-exocanthion": ["alare", "exocanthion"],
} as const;

/** Rules for where a brow starts. */
export type StartConvention = "alare-vertical" | "endocanthion-vertical";

/** All rules for where a brow starts. */
export const START_CONVENTIONS: readonly StartConvention[] = [
  "alare-vertical",
  "endocanthion-vertical",
];

/** Rules for where a brow peaks that are a line on the face. */
export type ArchGuideConvention =
  | "lateral-limbus-vertical"
  | "alare-through-pupil"
  | "eye-width-share"
  | "exocanthion-vertical"
  | "alare-through-lateral-limbus";

/** Rules for where a brow peaks: a line, the brow's own arch, or a share of its length. */
export type ArchConvention = ArchGuideConvention | "natural" | "brow-length-share";

/** All rules for where a brow peaks: its own arch first, then as they fall from the nose outward on most faces. */
export const ARCH_CONVENTIONS: readonly ArchConvention[] = [
  "natural",
  "lateral-limbus-vertical",
  "alare-through-pupil",
  "eye-width-share",
  "exocanthion-vertical",
  "brow-length-share",
  "alare-through-lateral-limbus",
];

/** The rule for where a brow ends. */
export type TailConvention = "alare-through-exocanthion";

/** Every rule that is a line on the face. */
export type GuideConvention = StartConvention | ArchGuideConvention | TailConvention;

/** A line of sight on the frontal view that places one mark of one brow. */
export interface Guide<Convention extends GuideConvention = GuideConvention> {
  readonly mark: "start" | "arch" | "tail";
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
    Pick<FaceSide<"mm">, (typeof GUIDE_LANDMARKS)[Convention][number]>
  >;
};
