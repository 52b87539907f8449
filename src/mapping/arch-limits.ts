import { archGuide, type FaceForGuide, type Guide } from "../proportions/index.js";
import type { Side } from "../units/index.js";
import { placeOf } from "./place.js";
import type { PlannableFace } from "./plannable-face.js";

/** One of the two verticals between which a natural arch is kept. */
export interface ArchLimit {
  readonly guide: Guide;
  /** Distance of the vertical from the midline, in mm. */
  readonly distance: number;
  /** What it runs through, in words. */
  readonly through: string;
}

/** Where no iris is known: its lateral edge lies at this share of the eye width. */
const LIMBUS_SHARE = 0.75;

/**
 * The verticals between which a natural arch stays where it grows: through the lateral limbus and
 * through exocanthion.
 *
 * Without a limbus the inner one stands at 0.75 eye widths: between the published places of the
 * limbus, 0.735 ± 0.067 and 0.762 ± 0.042 (Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239).
 */
export function archLimits(
  face: PlannableFace,
  side: Side,
): { readonly inner: ArchLimit; readonly outer: ArchLimit } {
  const inner =
    face[side].limbusLateral === undefined
      ? {
          guide: archGuide(face, side, "eye-width-share", { share: LIMBUS_SHARE }),
          through: `outer edge of the iris (taken at ${LIMBUS_SHARE} eye widths)`,
        }
      : {
          guide: archGuide(
            face as FaceForGuide<"lateral-limbus-vertical">,
            side,
            "lateral-limbus-vertical",
          ),
          through: "outer edge of the iris",
        };
  const outer = {
    guide: archGuide(face, side, "exocanthion-vertical"),
    through: "outer eye corner",
  };
  return { inner: withDistance(inner), outer: withDistance(outer) };
}

function withDistance(limit: Omit<ArchLimit, "distance">): ArchLimit {
  return { ...limit, distance: placeOf(limit.guide.line.through, limit.guide.side).distance };
}
