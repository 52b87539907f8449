import type { Face } from "../../landmarks/index.js";
import type { FaceFrame } from "./frame.js";
import { pitchOf, UPRIGHT_U } from "./turning.js";

/**
 * Standard uncertainty, in degrees, of how far the chin of a face in its space is raised: no less than heads
 * that are held upright differ by, and no less than depth shows and nobody corrected.
 */
export function pitchUncertainty(face: Face<"mm">, { pitchU }: FaceFrame): number {
  return pitchU ?? Math.max(UPRIGHT_U, Math.abs(pitchOf(face) ?? 0));
}
