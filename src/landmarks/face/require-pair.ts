import { eachSide, type Point, type Sides, type Unit } from "../../units/index.js";
import { refuse, SIDES } from "../../units/internal.js";
import type { Face } from "./face.js";
import type { SideLandmark } from "./landmarks.js";

/** A landmark on both sides, or a refusal that names where it is missing. */
export function requirePair<U extends Unit>(face: Face<U>, name: SideLandmark): Sides<Point<U>> {
  const missing = SIDES.filter((side) => !face[side][name]);
  if (missing.length > 0) {
    const field = missing.map((side) => `${side}.${name}`).join(", ");
    refuse("missing-landmark", field, undefined, "to be placed");
  }
  return eachSide((side) => face[side][name] as Point<U>);
}
