import type { Declared, Face } from "../landmarks/index.js";
import type { Length, Measured, Scale } from "../units/index.js";
import type { CaptureLimits, CapturePurpose } from "./limits.js";

/** What is known of a capture besides its landmarks. */
export interface CaptureOptions {
  readonly purpose: CapturePurpose;
  /** Default: from the width of the irises, where the face has them. */
  readonly scale?: Scale;
  /** From the camera to the eyes, where it was measured; default that of the scale, where it knows. */
  readonly cameraDistance?: Measured<Length<"mm">>;
  /** The camera's focal length in pixels of this picture: with a scale it tells the distance. */
  readonly focalLength?: Length<"px">;
  /** Another capture of the same client, upright and relaxed. */
  readonly baseline?: Face<"px">;
  /** What only somebody in the room knows. */
  readonly declared?: Declared;
  /** The smallest difference that matters; default 1 mm. */
  readonly tolerance?: Length<"mm">;
  /** Limits that replace those of the purpose (`CAPTURE_LIMITS`). */
  readonly limits?: Partial<CaptureLimits>;
}

/** A capture with everything that its checks read settled. */
export interface Capture extends Omit<
  CaptureOptions,
  "purpose" | "scale" | "tolerance" | "limits"
> {
  readonly face: Face<"px">;
  readonly scale: Scale | undefined;
  readonly tolerance: Length<"mm">;
  readonly limits: CaptureLimits;
}
