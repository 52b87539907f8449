import {
  type Length,
  measured,
  type Measured,
  type Note,
  type Scale,
  type ScaleNoteCode,
} from "../units/index.js";
import { refuse, requirePositive, scaleNote } from "../units/internal.js";

/**
 * How far a reference lies from the plane that is to be measured, and how far the camera does. For
 * a face that is the plane of the inner eye corners; frames correct for how far a brow lies from
 * it.
 */
export interface ReferenceDepth {
  /** How much nearer to the camera the reference lies; negative where it lies farther. */
  readonly nearer: Measured<Length<"mm">>;
  /** From the camera to what is to be measured. */
  readonly cameraDistance: Measured<Length<"mm">>;
}

/** What is known of a reference, beyond its length. */
export interface ReferenceOptions {
  /** Standard uncertainty of the known length; default 0. */
  readonly u?: Length<"mm">;
  /** Standard uncertainty of each point's place, in each axis; default 0.26 mm, a careful hand's. */
  readonly placement?: Length<"px">;
  /** Where the reference does not lie in the plane of what is measured. */
  readonly depth?: ReferenceDepth;
}

/**
 * What a length reads, in the millimetres of a reference that lies nearer to the camera, over what it is:
 * 1 − nearer/distance, by pinhole. It is 1 where the reference lies in the plane of what is measured.
 */
function perspectiveShrink(depth: ReferenceDepth | undefined): Measured {
  if (depth === undefined) return { value: 1, u: 0 };
  const nearer = measured<number>(depth.nearer.value, depth.nearer.u);
  const away = measured<number>(depth.cameraDistance.value, depth.cameraDistance.u);
  requirePositive("depth.cameraDistance", away.value);
  const ratio = nearer.value / away.value;
  if (ratio >= 1) {
    const need = `less than the camera's distance, ${away.value}`;
    refuse("out-of-range", "depth.nearer", nearer.value, need);
  }
  return measured(1 - ratio, Math.hypot(nearer.u, ratio * away.u) / away.value);
}

/** The scale of a known length and how it is seen in the photo, with both uncertainties. */
export function scaleOfKnown(
  source: Scale["source"],
  known: Measured,
  seen: Measured,
  depth: ReferenceDepth | undefined,
  notes: readonly Note<ScaleNoteCode>[] = [],
): Scale {
  const shrink = perspectiveShrink(depth);
  const factor = known.value / seen.value / shrink.value;
  const u =
    factor * Math.hypot(known.u / known.value, seen.u / seen.value, shrink.u / shrink.value);
  const scale = { from: "px", to: "mm", factor, u, source } as const;
  if (depth === undefined) return { ...scale, notes };
  const { nearer, cameraDistance } = depth;
  const about = { nearer: nearer.value, distance: cameraDistance.value };
  const offPlane = scaleNote("reference-off-plane", about);
  return { ...scale, notes: [...notes, offPlane], cameraDistance };
}
