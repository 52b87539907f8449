import { distance } from "../geometry/index.js";
import type { Face, SideLandmark } from "../landmarks/index.js";
import type { Scale } from "../units/index.js";

/**
 * Distance of the outer eye corners that stands for a face of unknown scale, in millimetres: women
 * have 88.39 ± 3.74, men 93.00 ± 5.56 (Hong Kong periocular norms, BioMed Res Int 2013:821428).
 */
export const USUAL_WIDTH = 90;

/** Distance of a landmark from its partner in the picture, where both are known. */
export function pairDistance({ right, left }: Face<"px">, name: SideLandmark): number | undefined {
  const [one, other] = [right[name], left[name]];
  return one && other && distance(one, other);
}

/** The scale of a face as wide as usual: for shares and small differences, not for lengths. */
export function usualScale(face: Face<"px">): Scale | undefined {
  const width = pairDistance(face, "exocanthion");
  if (width === undefined) return undefined;
  const factor = USUAL_WIDTH / width;
  return { from: "px", to: "mm", factor, u: 0.06 * factor, source: "given", notes: [] };
}
