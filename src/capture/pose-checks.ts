import type { Face, FaceWith } from "../landmarks/index.js";
import { faceFrame, type HalfFaces, halfFaces, toFace } from "../symmetry/index.js";
import type { Side } from "../units/index.js";
import { attempt, NO_MIDLINE } from "./attempt.js";
import type { Capture } from "./capture.js";
import { usualScale } from "./face-size.js";
import { type Finding, judged, unchecked } from "./finding.js";
import { headPose, type HeadPose } from "./head-pose.js";

/** How the head is held. */
export function poseFindings(capture: Capture): readonly Finding[] {
  const pose = headPose(capture.face);
  return [
    ...rollFindings(pose, capture),
    ...yawFindings(pose, capture),
    ...pitchFindings(pose, capture),
  ];
}

function rollFindings({ roll }: HeadPose, { limits }: Capture): readonly Finding[] {
  if (roll === undefined) {
    return [unchecked("roll", "roll")];
  }
  return judged("roll", { measured: roll, tooLow: "head-tilted", tooHigh: "head-tilted" }, limits);
}

function yawFindings({ yaw }: HeadPose, { face, limits }: Capture): readonly Finding[] {
  if (yaw !== undefined) {
    const towards = yaw.value > 0 ? "left" : "right";
    return judged(
      "yaw",
      { measured: yaw, tooLow: "head-turned", tooHigh: "head-turned", values: { towards } },
      limits,
    );
  }
  const halves = halvesOf(face);
  if (halves === undefined) {
    return [unchecked("yaw", "yaw")];
  }
  const difference = Math.abs(halves.difference.value);
  const narrow: Side = halves.difference.value < 0 ? "left" : "right";
  return judged(
    "yaw",
    {
      measured: halves.yaw,
      tooLow: "turned-or-asymmetric",
      tooHigh: "turned-or-asymmetric",
      values: { difference, narrow },
      ambiguous: true,
    },
    limits,
  );
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

function pitchFindings({ pitch }: HeadPose, { limits }: Capture): readonly Finding[] {
  if (pitch === undefined) {
    return [unchecked("pitch", "pitch")];
  }
  return judged(
    "pitch",
    { measured: pitch, tooLow: "chin-lowered", tooHigh: "chin-raised" },
    limits,
  );
}
