import { depthAt, type Face, type Skin } from "../../landmarks/index.js";
import {
  deepPoint,
  type DeepPoint,
  hasDepth,
  length,
  type Length,
  type Point,
} from "../../units/index.js";
import { toDegrees, toRadians } from "../../units/internal.js";
import { prominenceOf } from "./camera.js";
import { midpoint } from "../../geometry/index.js";

/** A head's yaw and pitch that are corrected: the head is seen from its own front. */
export interface Turning {
  /** Degrees by which the head was turned towards the client's left. */
  readonly yaw: number;
  /**
   * Standard uncertainty of the yaw, in degrees, if depth is scaled rightly: that of the plane, and
   * two fifths of the yaw itself where a detector estimated the depth.
   */
  readonly yawU: number;
  /** Relative standard uncertainty of the scale of depth. */
  readonly depthU: number;
  /** Degrees by which the yaw would change if depth were scaled wrongly by its whole. */
  readonly yawPerDepth: number;
  /** Depth, the chin as it was held, at which an error of the yaw moves nothing sideways: that of the head's centroid. */
  readonly pivot: Length<"mm">;
  /**
   * Degrees by which the chin was raised, from how far the mouth corners lie ahead of the outer eye
   * corners against an average upright profile: good to 5°. Absent, and not corrected, where these
   * corners have no depth.
   */
  readonly pitch?: number;
  /** Where a point without depth lies. */
  readonly skin: Skin;
}

/** A point of the face as the picture shows it, in millimetres, as it is seen from the front. */
export function turnForward([x, y, depth]: DeepPoint<"mm">, turning: Turning): DeepPoint<"mm"> {
  const { cosine, sine } = turnOf(turning.yaw);
  return raisedBy(
    -(turning.pitch ?? 0),
    deepPoint(x * cosine - depth * sine, y, x * sine + depth * cosine),
  );
}

/** The way back. */
export function turnAside(point: DeepPoint<"mm">, turning: Turning): DeepPoint<"mm"> {
  const { cosine, sine } = turnOf(turning.yaw);
  const [x, y, depth] = raisedBy(turning.pitch ?? 0, point);
  return deepPoint(x * cosine + depth * sine, y, depth * cosine - x * sine);
}

/** Where a point of a head comes to lie when the chin is raised by so many degrees, about the inner eye corners. */
export function raisedBy(degrees: number, [x, y, depth]: DeepPoint<"mm">): DeepPoint<"mm"> {
  const { cosine, sine } = turnOf(degrees);
  return deepPoint(x, y * cosine + depth * sine, depth * cosine - y * sine);
}

/**
 * Standard uncertainty of the place of a point, sideways, that comes from having turned the head:
 * from the yaw, and from the scale of depth, which also enters the yaw. Equal and opposite
 * distances from the midline share it: add it to a difference between the sides twice.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { turningUncertainty } from "brow-geometry/symmetry";
 * const skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 } as const;
 * const turning = { yaw: 4, yawU: 0.4, depthU: 0.1, yawPerDepth: 2, pivot: mm(-10), skin };
 * turningUncertainty(mm([55, 18, -21.6]), turning); // → 0.17
 * ```
 */
export function turningUncertainty(at: Point<"mm">, turning: Turning): Length<"mm"> {
  const { yawU, depthU } = turning;
  return length(
    Math.hypot(
      turningShift(at, turning, { yaw: yawU, depth: 0 }),
      turningShift(at, turning, { yaw: 0, depth: depthU }),
    ),
  );
}

/** Small errors of a turning. */
export interface TurningOffset {
  /** Degrees by which the true yaw is more. */
  readonly yaw: number;
  /** Share by which depth is truly more; the yaw then follows by itself. */
  readonly depth: number;
}

/** How far leftwards a point truly lies where the turning has small errors, to first order. */
export function turningShift(
  at: Point<"mm">,
  turning: Turning,
  { yaw, depth }: TurningOffset,
): Length<"mm"> {
  const { cosine, sine } = turnOf(turning.yaw);
  const { skin, pivot } = turning;
  const depthOf = hasDepth(at) ? at[2] : depthAt(at, skin) + prominenceOf(skin);
  // The yaw is about the upright, and the pivot lies in the head as it was held.
  const held = raisedBy(turning.pitch ?? 0, deepPoint(at[0], at[1], depthOf));
  const ahead = held[2] - pivot;
  const aheadAsSeen = ahead * cosine - at[0] * sine;
  const perDepth = aheadAsSeen * sine + ahead * toRadians(turning.yawPerDepth);
  return length(0 - ahead * toRadians(yaw) - perDepth * depth);
}

function turnOf(degrees: number): { readonly cosine: number; readonly sine: number } {
  const angle = toRadians(degrees);
  return { cosine: Math.cos(angle), sine: Math.sin(angle) };
}

/**
 * Degrees by which the line from outer eye corners to mouth corners leans forward on an upright head.
 * Measured by us on the canonical face mesh: 69.9 mm below, 11.1 ahead.
 */
export const PROFILE_LEAN = 9.03;

/**
 * Standard uncertainty of where a head looks straight ahead, in degrees: people who were photographed
 * upright hold their heads, and have profiles, that differ by so much. Measured by us with a face mesh on
 * 102 such faces: 0.9 ± 4.9 from {@link PROFILE_LEAN}.
 */
export const UPRIGHT_U = 5;

/** Degrees by which the chin of a face seen along its own mirror plane is raised. */
export function pitchOf({ right, left }: Face<"mm">): number | undefined {
  if (right.exocanthion === undefined || left.exocanthion === undefined) return undefined;
  if (right.cheilion === undefined || left.cheilion === undefined) return undefined;
  const eyes = midpoint(right.exocanthion, left.exocanthion);
  const mouth = midpoint(right.cheilion, left.cheilion);
  if (!hasDepth(eyes) || !hasDepth(mouth)) return undefined;
  return toDegrees(Math.atan2(mouth[2] - eyes[2], eyes[1] - mouth[1])) - PROFILE_LEAN;
}
