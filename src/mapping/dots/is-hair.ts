import type { Face, StandIn } from "../../landmarks/index.js";
import type { Side, Unit } from "../../units/index.js";

/** What a face has for a brow whose hair is not known, or has none. */
export function standInOf<U extends Unit>(
  { standIns = [] }: Face<U>,
  on: Side,
): StandIn | undefined {
  return standIns.find(({ landmark, side = on }) => landmark === "brow" && side === on);
}

/** Whether the borders of a brow are those of hair, not what stands in for it. */
export function isHair<U extends Unit>(face: Face<U>, side: Side): boolean {
  return standInOf(face, side) === undefined;
}
