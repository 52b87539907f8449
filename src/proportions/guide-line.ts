import { type Line, lineAlong, lineThrough } from "../geometry/index.js";
import { type GuideConvention, GUIDES, type SideLandmark } from "../landmarks/index.js";
import { type GuideRule } from "../landmarks/internal.js";
import { mm, type Point, type Side } from "../units/index.js";
import { requirePositive, refusingAs } from "../units/internal.js";
import type { FaceForGuide, Guide } from "./guide.js";
import { requireLandmarksOn } from "./require-guide-landmarks.js";
import { UPWARDS } from "./upwards.js";

/**
 * Where `"eye-width-share"` puts the arch unless told otherwise, in eye widths from endocanthion:
 * the mean of both published groups, (100 · 0.978 + 105 · 0.929) / 205.
 *
 * Source: Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239.
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
    const { share = ARCH_EYE_WIDTH_SHARE } = options;
    requirePositive("guideLine", "options.share", share);
    requireLandmarksOn("guideLine", face, [side], convention);
    const rule: GuideRule = GUIDES[convention];
    const from: readonly SideLandmark[] = rule.through;
    return {
      mark: rule.mark,
      convention,
      side,
      line: lineOf(rule, (name) => face[side][name] as Point<"mm">, share),
      from,
      standIns: (face.standIns ?? []).filter(({ landmark }) =>
        from.some((name) => name === landmark),
      ),
    };
  });
}

function lineOf(
  { drawn, through }: GuideRule,
  at: (name: SideLandmark) => Point<"mm">,
  share: number,
): Line<"mm"> {
  switch (drawn) {
    case "vertical":
      return lineAlong(at(through[0]), UPWARDS);
    case "line":
      return lineThrough(at(through[0]), at(through[1]));
    case "share": {
      const [from, to] = [at(through[0]), at(through[1])];
      return lineAlong(mm([from[0] + share * (to[0] - from[0]), from[1]]), UPWARDS);
    }
  }
}
