import { type Face, landmarkUncertainty } from "../landmarks/index.js";
import { measured, type Measured, type Side, toDegrees } from "../units/index.js";
import type { Capture } from "./capture.js";
import { axesInPicture, dot, middleOf, wayFrom } from "./facial-axes.js";
import { biocularWidth, USUAL_WIDTH } from "./face-size.js";
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
    return [
      unchecked(
        "roll",
        "Whether the head is tilted",
        "both inner eye corners and a landmark of nose, mouth or chin",
      ),
    ];
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
  const halves = halfFaces(face);
  if (halves === undefined) {
    return [
      unchecked(
        "yaw",
        "Whether the head is turned",
        "landmarks with depth, or sellion or glabella and both outer eye corners",
      ),
    ];
  }
  const { turn, difference, narrow } = halves;
  return judged(
    "yaw",
    {
      measured: turn,
      tooLow: "turned-or-asymmetric",
      tooHigh: "turned-or-asymmetric",
      values: { difference, narrow },
      ambiguous: true,
    },
    limits,
  );
}

/** Half-face widths, and the turn of the head that would explain their difference. */
interface HalfFaces {
  /** Degrees to the client's left. */
  readonly turn: Measured;
  /** Millimetres on a face as wide as usual. */
  readonly difference: number;
  readonly narrow: Side;
}

/**
 * How far a midline landmark lies ahead of the outer eye corners, over their distance. Measured by us
 * on the canonical face mesh: sellion 52.4 and glabella 53.9 deep, corners 31.7 deep and 88.9 apart.
 */
const AHEAD = { sellion: 0.233, glabella: 0.249 } as const;

/**
 * A turn by φ moves the middle by ahead·sin φ, makes the halves differ by twice as much, and narrows
 * the whole by cos φ.
 */
function halfFaces(face: Face<"px">): HalfFaces | undefined {
  const landmark = face.midline.sellion === undefined ? "glabella" : "sellion";
  const middle = face.midline[landmark];
  const corners = middleOf(face.right.exocanthion, face.left.exocanthion);
  const axes = axesInPicture(face);
  const width = biocularWidth(face);
  if (middle === undefined || corners === undefined || axes === undefined || width === undefined) {
    return undefined;
  }
  const share = (2 * dot(wayFrom(corners, middle), axes.across)) / width;
  const u =
    Math.hypot(
      2 * landmarkUncertainty(face, landmark),
      Math.SQRT2 * landmarkUncertainty(face, "exocanthion"),
    ) / USUAL_WIDTH;
  const tangent = share / (2 * AHEAD[landmark]);
  const slope = 1 / (2 * AHEAD[landmark] * (1 + tangent ** 2));
  return {
    turn: measured(toDegrees(Math.atan(tangent)), toDegrees(u * slope)),
    difference: Math.abs(share) * USUAL_WIDTH,
    narrow: share > 0 ? "left" : "right",
  };
}

function pitchFindings({ pitch }: HeadPose, { limits }: Capture): readonly Finding[] {
  if (pitch === undefined) {
    return [
      unchecked(
        "pitch",
        "Whether the chin is raised or lowered",
        "depth at the outer eye corners and the corners of the mouth",
      ),
    ];
  }
  return judged(
    "pitch",
    { measured: pitch, tooLow: "chin-lowered", tooHigh: "chin-raised" },
    limits,
  );
}
