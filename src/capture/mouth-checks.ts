import { distance } from "../geometry/index.js";
import { landmarkUncertainty } from "../landmarks/index.js";
import { measured } from "../units/index.js";
import type { Capture } from "./capture.js";
import { type Finding, judged, unchecked } from "./finding.js";

/** Turns a landmark's uncertainty in millimetres into a share of the mouth's width; ours. */
const USUAL_MOUTH_WIDTH = 50;

/** Whether the lips are closed. */
export function mouthFindings({ face, limits }: Capture): readonly Finding[] {
  const { stomionSuperius, stomionInferius } = face.midline;
  const [right, left] = [face.right.cheilion, face.left.cheilion];
  const width = right && left && distance(right, left);
  if (stomionSuperius === undefined || stomionInferius === undefined || !width) {
    return [unchecked("mouthOpening", "mouthOpening")];
  }
  const gap = distance(stomionSuperius, stomionInferius) / width;
  const u = (Math.SQRT2 * landmarkUncertainty(face, "stomionInferius")) / USUAL_MOUTH_WIDTH;
  return judged(
    "mouthOpening",
    { measured: measured(gap, u), tooLow: "lips-apart", tooHigh: "lips-apart" },
    limits,
  );
}
