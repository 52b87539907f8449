import {
  type Length,
  measured,
  type Measured,
  type Note,
  type Scale,
  type ScaleNoteCode,
} from "../units/index.js";
import { note, refuse, requirePositive, DEPTH_NOTES } from "../units/internal.js";

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

/**
 * What a length reads, in the millimetres of a reference that lies nearer to the camera, over what it
 * is: 1 − nearer/distance (pinhole); 1 where the reference lies in the plane of what is measured.
 */
export function perspectiveShrink(where: string, depth: ReferenceDepth | undefined): Measured {
  if (depth === undefined) return { value: 1, u: 0 };
  const nearer = measured<number>(depth.nearer.value, depth.nearer.u);
  const away = measured<number>(depth.cameraDistance.value, depth.cameraDistance.u);
  requirePositive(where, "depth.cameraDistance", away.value);
  const ratio = nearer.value / away.value;
  if (ratio >= 1) {
    const need = `less than the camera's distance, ${away.value}`;
    refuse("out-of-range", where, "depth.nearer", nearer.value, need);
  }
  return measured(1 - ratio, Math.hypot(nearer.u, ratio * away.u) / away.value);
}

export function depthNotes(depth: ReferenceDepth | undefined): readonly Note<ScaleNoteCode>[] {
  if (depth === undefined) return [];
  return [
    note(DEPTH_NOTES, "reference-off-plane", {
      nearer: depth.nearer.value,
      distance: depth.cameraDistance.value,
    }),
  ];
}

/** What a scale keeps of a reference's depth: the camera's distance from what is measured. */
export function distanceOf(depth: ReferenceDepth | undefined): Pick<Scale, "cameraDistance"> {
  return depth === undefined ? {} : { cameraDistance: depth.cameraDistance };
}
