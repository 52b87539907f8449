import type { Spot } from "../stage/box.js";

/** What is to happen to a part of the skin: old pigment is covered, a scar is left alone. */
export const AIMS = ["stay-off", "cover"] as const;
export type Aim = (typeof AIMS)[number];

/** A part of the skin that was drawn by finger on the picture. */
export interface DrawnArea {
  readonly aim: Aim;
  /** Its edge in the coordinates of the picture; without one, in millimetres with y down. */
  readonly edge: readonly Spot[];
}
