import { placeOnSide } from "../../symmetry/index.js";
import type { Side } from "../../units/index.js";
import type { PlannableFace } from "./plannable-face.js";

/** One of the two verticals between which a natural arch is kept. */
export interface ArchLimit {
  readonly convention: "lateral-limbus-vertical" | "eye-width-share" | "exocanthion-vertical";
  /** Distance of the vertical from the midline, in mm. */
  readonly distance: number;
}

/** Where no iris is known: its lateral edge lies at this share of the eye width. */
export const LIMBUS_SHARE = 0.75;

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
  const { endocanthion, exocanthion, limbusLateral } = face[side];
  const from = placeOnSide(endocanthion, side).distance;
  const to = placeOnSide(exocanthion, side).distance;
  return {
    inner:
      limbusLateral === undefined
        ? { convention: "eye-width-share", distance: from + LIMBUS_SHARE * (to - from) }
        : {
            convention: "lateral-limbus-vertical",
            distance: placeOnSide(limbusLateral, side).distance,
          },
    outer: { convention: "exocanthion-vertical", distance: to },
  };
}
