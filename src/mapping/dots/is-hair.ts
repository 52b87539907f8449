import type { Face } from "../../landmarks/index.js";
import type { Side, Unit } from "../../units/index.js";

/** Whether the borders of a brow are those of hair, not what a source has for a brow. */
export function isHair<U extends Unit>({ standIns = [] }: Face<U>, on: Side): boolean {
  return standIns.every(({ landmark, side = on }) => landmark !== "brow" || side !== on);
}
