import type { Measured } from "./measured.js";
import type { Note } from "../quantities/note.js";
import { type Length, length } from "../quantities/quantity.js";
import type { ScaleSource } from "./scale-source.js";
import type { ScaleNoteCode } from "./notes.js";

/**
 * The conversion between pixels of one photo and millimetres: a value that knows both ends.
 *
 * `factor` is millimetres per pixel, `u` its standard uncertainty in the same unit.
 */
export interface Scale {
  readonly from: "px";
  readonly to: "mm";
  readonly factor: number;
  readonly u: number;
  readonly source: ScaleSource;
  readonly notes: readonly Note<ScaleNoteCode>[];
  /**
   * From the camera to the plane in which the scale holds, where it is known: frames then correct
   * perspective.
   */
  readonly cameraDistance?: Measured<Length<"mm">>;
}

/**
 * A length of the photo in millimetres.
 *
 * @example
 * ```ts
 * import { mm, px, scaleFromReference, toMillimetres } from "brow-geometry";
 * const scale = scaleFromReference(px([0, 0]), px([200, 0]), mm(50));
 * toMillimetres(px(84), scale); // → 21
 * ```
 */
export function toMillimetres(of: Length<"px">, scale: Scale): Length<"mm"> {
  return length(of * scale.factor);
}

/**
 * A length in millimetres as pixels of the photo.
 *
 * @example
 * ```ts
 * import { mm, px, scaleFromReference, toPixels } from "brow-geometry";
 * const scale = scaleFromReference(px([0, 0]), px([200, 0]), mm(50));
 * toPixels(mm(21), scale); // → 84
 * ```
 */
export function toPixels(of: Length<"mm">, scale: Scale): Length<"px"> {
  return length(of / scale.factor);
}
