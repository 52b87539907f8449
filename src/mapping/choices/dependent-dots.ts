import type { Dot } from "../../landmarks/index.js";

/** The dots that follow when one is moved, as far as they are not pinned themselves. */
export interface DependentDots {
  readonly sameSide: readonly Dot[];
  readonly otherSide: readonly Dot[];
}

const BELOW_START = ["upperBody", "lowerStart", "lowerBody"] as const;
const BELOW_ARCH = ["upperBody", "lowerBody", "lowerArch"] as const;

/**
 * Which dots may follow a dot that an artist moves, so that an app redraws those and no others.
 *
 * The arch follows start and tail end where front and tail divide by a share of the length, the
 * tail end the start where it is level with it; by other choices they stay, and so do the dots that
 * depend on them. A brow that is carried by measure may follow the leading one with every dot.
 */
export const DEPENDENT_DOTS: { readonly [Moved in Dot]: DependentDots } = {
  upperStart: {
    sameSide: [...BELOW_START, "upperArch", "lowerArch", "tailEnd"],
    otherSide: ["upperStart", ...BELOW_START, "upperArch", "lowerArch", "tailEnd"],
  },
  upperBody: { sameSide: ["lowerBody"], otherSide: ["upperBody", "lowerBody"] },
  upperArch: { sameSide: BELOW_ARCH, otherSide: ["upperArch", ...BELOW_ARCH] },
  tailEnd: {
    sameSide: ["upperArch", ...BELOW_ARCH],
    otherSide: ["tailEnd", "upperArch", ...BELOW_ARCH],
  },
  lowerStart: {
    sameSide: ["tailEnd", "upperArch", ...BELOW_ARCH],
    otherSide: ["lowerStart", "tailEnd", "upperArch", ...BELOW_ARCH],
  },
  lowerBody: { sameSide: [], otherSide: ["lowerBody"] },
  lowerArch: { sameSide: [], otherSide: ["lowerArch"] },
};
