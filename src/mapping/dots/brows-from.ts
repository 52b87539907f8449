import type { Face, StandIn } from "../../landmarks/index.js";
import { BY_HAND } from "../../landmarks/internal.js";
import type { Length, Unit } from "../../units/index.js";

/** A face whose brows come from somewhere else than its landmarks: how well they are known, and what they are. */
export function browsFrom<U extends Unit>(
  face: Face<U>,
  u: Length<"mm">,
  brows: readonly StandIn[],
): Face<U> {
  const { source, standIns = [] } = face;
  return {
    ...face,
    source: {
      markup: "by-hand",
      ringFactor: { value: 1, u: 0 },
      depth: "none",
      ...source,
      // What a detector's corrected points still err by is known of its own brows only.
      corrected: false,
      uncertainty: {
        default: BY_HAND,
        ...source?.uncertainty,
        landmarks: { ...source?.uncertainty.landmarks, brow: u },
      },
    },
    standIns: [...standIns.filter(({ landmark }) => landmark !== "brow"), ...brows],
  };
}
