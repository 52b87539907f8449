import type { Line } from "../geometry/index.js";
import type {
  Face,
  FaceSide,
  GuideConvention,
  GUIDES,
  Mark,
  SideLandmark,
  StandIn,
} from "../landmarks/index.js";
import type { Side } from "../units/index.js";

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
