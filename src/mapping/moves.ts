import type { Dot } from "../landmarks/index.js";
import type { Length, Side } from "../units/index.js";

/** How far, and which way, a dot goes from where it grows to where it is planned. */
export interface Move {
  readonly side: Side;
  readonly dot: Dot;
  /** Parallel to the midline, positive towards the forehead. */
  readonly up: Length<"mm">;
  /** Across, positive away from the midline. */
  readonly outward: Length<"mm">;
  /** In English, rounded to half a millimetre: "left arch: up 1.5 mm, outward 1 mm". */
  readonly text: string;
}
