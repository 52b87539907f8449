import type { Point, Scale } from "../../units/index.js";
import type { Midline } from "../midline/midline.js";
import type { Camera } from "./camera.js";
import type { Turning } from "./turning.js";

/**
 * The conversion between one photo and the face on it: a value that knows both ends.
 *
 * It turns the face upright, so that the midline is x = 0 and y points up, and reverses orientation.
 */
export interface FaceFrame {
  readonly midline: Midline<"px">;
  readonly scale: Scale;
  /** Where the face space has its origin; with depth where both inner eye corners have it. */
  readonly origin: Point<"px">;
  /** Present where a turned head is looked at from its own front: see `turnToFront`. */
  readonly turning?: Turning;
  /** Present where the scale knows how far away the camera was: perspective is corrected. */
  readonly camera?: Camera;
}
