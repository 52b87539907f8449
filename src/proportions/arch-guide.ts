import { lineAlong, lineThrough } from "../geometry/index.js";
import { mm, requirePositive, type Side } from "../units/index.js";
import { drawGuide, UPWARDS } from "./draw-guide.js";
import type { ArchGuideConvention, FaceForGuide, Guide } from "./guide.js";

/**
 * Where `"eye-width-share"` puts the arch unless told otherwise, in eye widths from endocanthion:
 * the mean of both published groups, (100 · 0.978 + 105 · 0.929) / 205.
 *
 * Source: Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239.
 */
export const ARCH_EYE_WIDTH_SHARE = 0.953;

/** What {@link archGuide} leaves to the caller. */
export interface ArchGuideOptions {
  /** Place of `"eye-width-share"` in eye widths; default {@link ARCH_EYE_WIDTH_SHARE}. */
  readonly share?: number;
}

/**
 * The line on which a brow peaks.
 *
 * Parallel to the midline, in the order in which they lie on any realistic face:
 *
 * - `"lateral-limbus-vertical"` through the outer edge of the iris (Westmore, as reported by Matros
 *   et al., Plast Reconstr Surg 2009;124:1296), at about 0.75 eye widths from endocanthion;
 * - `"eye-width-share"` at a share of the eye's width from endocanthion: 0.978 ± 0.131 on 100
 *   models, 0.929 ± 0.146 on 105 women (Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239);
 * - `"exocanthion-vertical"` through the outer corner of the eye (Sclafani & Jung, Arch Facial Plast
 *   Surg 2010;12:123–127, find the arch just medial to it).
 *
 * From the nose wing (trade practice, no source):
 *
 * - `"alare-through-pupil"`, which meets a brow about 0.78 eye widths from endocanthion;
 * - `"alare-through-lateral-limbus"`, which on most faces meets it beyond the outer corner of the
 *   eye, at about 1.10: not to be mistaken for the vertical through the same landmark.
 *
 * Eye widths where no source is named were measured by us on 244 frontal faces.
 *
 * @throws GeometryError `missing-landmark`; `coincident-points` where two landmarks give no line;
 * `not-finite`, `out-of-range` where the share is not positive
 *
 * @example
 * ```ts
 * import { archGuide, mm } from "brow-geometry";
 * const left = { endocanthion: mm([15.9, 0]), exocanthion: mm([43.9, 0]) };
 * const face = { right: {}, left, midline: {} };
 * archGuide(face, "left", "exocanthion-vertical").line.through; // → [43.9, 0]
 * archGuide(face, "left", "eye-width-share", { share: 0.75 }).line.through; // → [36.9, 0]
 * ```
 */
export function archGuide<Convention extends ArchGuideConvention, Which extends Side>(
  face: FaceForGuide<Convention, Which>,
  side: Which,
  convention: Convention,
  options: ArchGuideOptions = {},
): Guide<Convention> {
  const { share = ARCH_EYE_WIDTH_SHARE } = options;
  requirePositive("archGuide", "options.share", share);
  return drawGuide({ mark: "arch", convention, side }, face, (first, second) => {
    switch (convention) {
      case "lateral-limbus-vertical":
      case "exocanthion-vertical":
        return lineAlong(first, UPWARDS);
      case "eye-width-share":
        return lineAlong(mm([first[0] + share * (second[0] - first[0]), first[1]]), UPWARDS);
      case "alare-through-pupil":
      case "alare-through-lateral-limbus":
        return lineThrough(first, second);
    }
  });
}
