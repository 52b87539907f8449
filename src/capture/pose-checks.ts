import type { Face, FaceWith } from "../landmarks/index.js";
import { faceFrame, type HalfFaces, halfFaces, toFace } from "../symmetry/index.js";
import { attempt, NO_MIDLINE } from "./attempt.js";
import { usualScale } from "./face-size.js";
import type { Reading } from "./finding.js";
import { headPose } from "./head-pose.js";

/** How the head is held; without depth the halves of the face may tell a turn. */
export function poseReadings(face: Face<"px">): readonly Reading[] {
  const { roll, yaw, pitch } = headPose(face);
  return [
    { check: "roll", measured: roll },
    yaw === undefined
      ? turnOfHalves(halvesOf(face))
      : { check: "yaw", measured: yaw, values: { towards: yaw.value > 0 ? "left" : "right" } },
    { check: "pitch", measured: pitch },
  ];
}

function turnOfHalves(halves: HalfFaces | undefined): Reading {
  const difference = halves?.difference.value ?? 0;
  return {
    check: "yaw",
    measured: halves?.yaw,
    values: { difference: Math.abs(difference), narrow: difference < 0 ? "left" : "right" },
    ambiguous: "turned-or-asymmetric",
  };
}

/** How wide the halves of a face look on the photo, where its landmarks tell. */
function halvesOf(face: Face<"px">): HalfFaces | undefined {
  const scale = usualScale(face);
  if (scale === undefined) return undefined;
  // Where there is that scale there are both outer eye corners.
  const seen = (): HalfFaces =>
    halfFaces(toFace(face, faceFrame(face, scale)) as FaceWith<"mm", "exocanthion">);
  const halves = attempt(seen, NO_MIDLINE);
  return "answer" in halves ? halves.answer : undefined;
}
