import type { Face } from "../../landmarks/index.js";
import type { Unit } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { Lead } from "../choices/choice-tables.js";
import { isHair } from "./is-hair.js";

/** Which brow leads where nobody chose: both, or the only one whose hair is known. */
export function defaultLead<U extends Unit>(face: Face<U>): Lead {
  const [side, ...others] = SIDES.filter((one) => isHair(face, one));
  return side === undefined || others.length > 0 ? "middle" : side;
}
