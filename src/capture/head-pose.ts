import { dotProduct, spaceAdvance } from "../geometry/internal.js";
import { type Face, type FaceWith, landmarkUncertainty } from "../landmarks/index.js";
import {
  faceFrame,
  fitMidline,
  fitMidsagittalPlane,
  type HalfFaces,
  halfFaces,
  toFace,
} from "../symmetry/index.js";
import { UPRIGHT_U } from "../symmetry/internal.js";
import { attempt, measured, type Measured } from "../units/index.js";
import { toDegrees, refusingAs } from "../units/internal.js";
import { NO_MIDLINE } from "./no-midline.js";
import {
  axesInSpace,
  deepPairs,
  type FacialAxes,
  unit,
  type Way,
  wayAcross,
} from "./facial-axes.js";
import { usualScale } from "./face-size.js";
import type { Reading } from "./finding.js";

/** How a head is held before the camera, in degrees; each angle where the landmarks tell it. */
export interface HeadPose {
  /** The midline's tilt: positive where the chin end lies towards the client's left. */
  readonly roll?: Measured;
  /** Positive where the face is turned to the client's left. */
  readonly yaw?: Measured;
  /** Positive where the chin is raised. */
  readonly pitch?: Measured;
}

/** What a detector's depth scatters, per point; ours, after what nine points of a mesh leave, in mm. */
const ESTIMATED_DEPTH_U = 2;

/**
 * How far a yaw read from a detector's depth may be off, as a share of itself. Measured by us: on 21
 * faces of six photos, turned up to 30°, the half-face widths say about 1.4 times as much.
 */
const ESTIMATED_YAW_U = 0.3;

/**
 * How a head is held: roll from the midline; yaw and pitch from depth only.
 *
 * Yaw comes from the mirror plane of the `symmetricPoints`, or without them from the direction of
 * all pairs with depth; pitch from the line between the corners of the eyes and of the mouth,
 * against that of an average face (`PROFILE_LEAN`), as `turnToFront` reports it: a pitch is good to
 * about 5°, the difference of two pitches of the same person is better.
 *
 * @throws GeometryError `sides-swapped` for a mirrored picture, `not-finite`
 *
 * @example
 * ```ts
 * import { headPose, px } from "brow-geometry";
 * const pose = headPose({
 *   right: { endocanthion: px([460, 500, 0]), exocanthion: px([370, 500, -14]), cheilion: px([450, 690, 8]) },
 *   left: { endocanthion: px([560, 500, -9]), exocanthion: px([650, 500, -38]), cheilion: px([570, 690, -2]) },
 *   midline: {},
 * });
 * pose.yaw?.value; // → 4.9
 * ```
 */
export function headPose(face: Face<"px">): HeadPose {
  return refusingAs("headPose", () => {
    const roll = rollOf(face);
    const yaw = yawOf(face);
    const axes = axesInSpace(face);
    return {
      ...(roll === undefined ? {} : { roll }),
      ...(yaw === undefined ? {} : { yaw }),
      ...(axes === undefined ? {} : { pitch: pitchOf(axes) }),
    };
  });
}

function rollOf(face: Face<"px">): Measured | undefined {
  const midline = attempt(() => fitMidline(face), NO_MIDLINE);
  return midline.ok ? measured(midline.answer.tilt, midline.answer.tiltU) : undefined;
}

function yawOf(face: Face<"px">): Measured | undefined {
  const plane = attempt(() => fitMidsagittalPlane(face), [...NO_MIDLINE, "wrong-count"]);
  const seen = plane.ok ? measured(plane.answer.yaw, plane.answer.yawU) : yawOfPairs(face);
  if (seen === undefined || face.source?.depth !== "estimated") return seen;
  return measured(seen.value, Math.hypot(seen.u, ESTIMATED_YAW_U * seen.value));
}

/** The yaw of a head of which few points have depth: too few for a plane. */
function yawOfPairs(face: Face<"px">): Measured | undefined {
  const pairs = deepPairs(face);
  const [right, down, ahead] = wayAcross(pairs);
  const width = Math.hypot(right, down);
  const scale = usualScale(face);
  if (pairs.length === 0 || scale === undefined) return undefined;
  const estimated = face.source?.depth === "estimated";
  const depthU = estimated ? ESTIMATED_DEPTH_U : landmarkUncertainty(face, "exocanthion");
  return measured(
    toDegrees(Math.atan2(-ahead, width)),
    toDegrees((Math.sqrt(2 * pairs.length) * depthU) / (width * scale.factor)),
  );
}

function pitchOf({ across, up }: FacialAxes): Measured {
  const viewer: Way = [0, 0, 1];
  const ahead = unit(spaceAdvance(viewer, across, -dotProduct(viewer, across)));
  return measured(toDegrees(Math.asin(-dotProduct(up, ahead))), UPRIGHT_U);
}

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
  return halves.ok ? halves.answer : undefined;
}
