import type { Face } from "../../landmarks/index.js";
import type { Unit } from "../../units/index.js";

/** Whether the borders of brows are those of hair, not what a source has for brows. */
export function isHair<U extends Unit>({ standIns = [] }: Face<U>): boolean {
  return standIns.every(({ landmark }) => landmark !== "brow");
}
