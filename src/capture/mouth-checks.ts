import { distance } from "../geometry/index.js";
import { type Face, landmarkUncertainty } from "../landmarks/index.js";
import { measured } from "../units/index.js";
import type { Reading } from "./finding.js";

/** Turns a landmark's uncertainty in millimetres into a share of the mouth's width; ours. */
const USUAL_MOUTH_WIDTH = 50;

/** Whether the lips are closed. */
export function mouthReading(face: Face<"px">): Reading {
  const { stomionSuperius: upper, stomionInferius: lower } = face.midline;
  const [right, left] = [face.right.cheilion, face.left.cheilion];
  const width = right && left && distance(right, left);
  const u = (Math.SQRT2 * landmarkUncertainty(face, "stomionInferius")) / USUAL_MOUTH_WIDTH;
  const gap = width ? upper && lower && distance(upper, lower) / width : undefined;
  return { check: "mouthOpening", measured: gap === undefined ? gap : measured(gap, u) };
}
