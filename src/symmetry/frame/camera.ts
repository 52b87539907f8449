import type { Skin } from "../../landmarks/index.js";
import { type FlatPoint, type Length, length, type Measured } from "../../units/index.js";
import { refuse } from "../../units/internal.js";

/** A pinhole camera whose perspective is corrected in what is read. */
export interface Camera {
  /** From the camera to the plane of the inner eye corners, in which the scale holds. */
  readonly distance: Length<"mm">;
  /** Where the camera pointed: in the face space, before a turned head is looked at from its front. */
  readonly axis: FlatPoint<"mm">;
  /** How a brow's skin falls back from the middle of the face, for points without depth. */
  readonly skin: Skin;
  /** How much nearer to the camera than the inner eye corners that skin is in the middle. */
  readonly prominence: Length<"mm">;
}

/**
 * How much nearer to the camera than the inner eye corners the brows' skin lies in the middle of the face,
 * where no depth tells. It is 15.6 mm on the canonical face mesh; the standard uncertainty is ours.
 */
export const BROW_PROMINENCE: Measured<Length<"mm">> = { value: length(15), u: length(2) };

/** The same of a skin: a fitted one knows by itself where it lies, a flat one lies in their plane. */
export function prominenceOf(skin: Skin): Length<"mm"> {
  return skin.kind === "modelled" ? BROW_PROMINENCE.value : length(0);
}

/**
 * How many times too large a length reads that lies `nearer` to the camera than the inner eye corners:
 * 1/(1 − nearer/distance), by pinhole. Refuses what lies in the camera or behind it.
 */
export function enlargement(nearer: number, { distance }: Pick<Camera, "distance">): number {
  const share = 1 - nearer / distance;
  if (share > 0) return 1 / share;
  const need = `more than the depth of every point, ${nearer}`;
  refuse("out-of-range", "scale.cameraDistance", distance, need);
}
