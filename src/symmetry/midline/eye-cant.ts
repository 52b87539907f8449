import { distance, distanceAlongLine, distanceFromLine } from "../../geometry/index.js";
import type { FaceWith } from "../../landmarks/index.js";
import { leftIsPositive, senseOf } from "../../landmarks/internal.js";
import {
  type Decision,
  type DecisionOptions,
  type Measured,
  type Point,
  type Sides,
  type Unit,
} from "../../units/index.js";
import {
  decisionOn,
  measuredAs,
  NOTICED_CANT,
  refuse,
  refusingAs,
  toDegrees,
  within,
} from "../../units/internal.js";
import { midlineOf } from "./fit-midline.js";
import { biocularWidth, uncertaintyOf } from "./mirror-pairs.js";
import type { DeviationOptions } from "./nose-deviation.js";

/** How the line of the eyes runs against the horizontal of the face. */
export interface EyeCant {
  /** Degrees from the perpendicular of the midline; positive where the client's left eye is higher. */
  readonly angle: Measured;
  /** Between which landmarks it was read. */
  readonly between: "pupil" | "exocanthion";
  /** Against what others recognise. */
  readonly decision: Decision;
}

/**
 * How far the line of the eyes slants against the horizontal of the face, decided by the 2.31° that
 * others recognise.
 *
 * Read through the pupils, as the limit is stated; through the outer eye corners where a pupil is
 * not known. A fitted midline turns with the eyes: where all of them slant by up to 3° it takes up
 * a fifth to a third of that (measured by us on an even face), which u does not cover. Where the
 * slant itself is the question, give a midline that the artist marked. For the same reason u is up
 * to 1.1 times too wide with a fitted midline: its errors count as if they were others than those of
 * the eyes.
 *
 * Source of the limit: 160 raters, J Oral Maxillofac Surg 2015;73:1606–1614.
 *
 * @throws GeometryError `coincident-points`, and what {@link fitMidline} throws
 *
 * @example
 * ```ts
 * import { eyeCant, FACE_MIDLINE, mm } from "brow-geometry";
 * const { angle, between, decision } = eyeCant(
 *   { right: { pupil: mm([-31.5, 0]) }, left: { pupil: mm([31.5, 4]) }, midline: {} },
 *   { midline: { line: FACE_MIDLINE, tiltU: 0.2 } },
 * );
 * angle; // → { value: 3.6, u: 0.4 }
 * between; // → "pupil"
 * decision.outcome; // → "outside"
 * ```
 */
export function eyeCant<U extends Unit>(
  face: FaceWith<U, "pupil"> | FaceWith<U, "exocanthion">,
  options: DeviationOptions<U> = {},
): EyeCant {
  return refusingAs("eyeCant", () =>
    cantAgainst(options.midline ?? midlineOf(face), face, options),
  );
}

/** {@link eyeCant} against a midline, asked for by another function. */
export function cantAgainst<U extends Unit>(
  { line, tiltU }: NonNullable<DeviationOptions<U>["midline"]>,
  face: FaceWith<U, "pupil"> | FaceWith<U, "exocanthion">,
  options: DecisionOptions = {},
): EyeCant {
  const { between, right, left } = eyesOf(face);
  const apart = distance(right, left);
  if (apart === 0) {
    refuse("coincident-points", `left.${between}`, left, "another point");
  }
  const up = distanceAlongLine(left, line) - distanceAlongLine(right, line);
  const across = distanceFromLine(left, line) - distanceFromLine(right, line);
  const leftwards = leftIsPositive(line.direction, senseOf(face)) ? across : 0 - across;
  const u = uncertaintyOf(face, between, biocularWidth(face) ?? apart);
  const angle = measuredAs(
    toDegrees(Math.atan2(up, leftwards)),
    Math.hypot(toDegrees((Math.SQRT2 * u) / apart), tiltU),
  );
  return { angle, between, decision: decisionOn(angle, within(NOTICED_CANT), options) };
}

interface Eyes<U extends Unit> extends Sides<Point<U>> {
  readonly between: EyeCant["between"];
}

function eyesOf<U extends Unit>(face: FaceWith<U, "pupil"> | FaceWith<U, "exocanthion">): Eyes<U> {
  if (hasPupils(face)) {
    return { between: "pupil", right: face.right.pupil, left: face.left.pupil };
  }
  const { right, left } = face;
  return { between: "exocanthion", right: right.exocanthion, left: left.exocanthion };
}

function hasPupils<U extends Unit>(
  face: FaceWith<U, "pupil"> | FaceWith<U, "exocanthion">,
): face is FaceWith<U, "pupil"> {
  return face.right.pupil !== undefined && face.left.pupil !== undefined;
}
