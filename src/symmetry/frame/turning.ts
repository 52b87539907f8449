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

/** A head's yaw that is corrected: the head is seen from its own front. */
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
  /** Depth at which an error of the yaw moves nothing sideways: that of the head's centroid. */
  readonly pivot: Length<"mm">;
  /**
   * Degrees by which the chin is raised, from how far the mouth corners lie ahead of the outer eye
   * corners against `PROFILE_LEAN`: good to about 5°. It is not corrected; absent where these
   * corners have no depth.
   */
  readonly pitch?: number;
  /** Where a point without depth lies. */
  readonly skin: Skin;
}

/** A point of the face as the picture shows it, in millimetres, as it is seen from the front. */
export function turnForward([x, y, depth]: DeepPoint<"mm">, turning: Turning): DeepPoint<"mm"> {
  const { cosine, sine } = turnOf(turning);
  return deepPoint(x * cosine - depth * sine, y, x * sine + depth * cosine);
}

/** The way back. */
export function turnAside([x, y, depth]: DeepPoint<"mm">, turning: Turning): DeepPoint<"mm"> {
  const { cosine, sine } = turnOf(turning);
  return deepPoint(x * cosine + depth * sine, y, depth * cosine - x * sine);
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
  const { cosine, sine } = turnOf(turning);
  const { skin, pivot } = turning;
  const ahead = (hasDepth(at) ? at[2] : depthAt(at, skin) + prominenceOf(skin)) - pivot;
  const aheadAsSeen = ahead * cosine - at[0] * sine;
  const perDepth = aheadAsSeen * sine + ahead * toRadians(turning.yawPerDepth);
  return length(0 - ahead * toRadians(yaw) - perDepth * depth);
}

function turnOf({ yaw }: Turning): { readonly cosine: number; readonly sine: number } {
  const angle = toRadians(yaw);
  return { cosine: Math.cos(angle), sine: Math.sin(angle) };
}

/**
 * Degrees by which the line from outer eye corners to mouth corners leans forward on an upright head.
 * Measured by us on the canonical face mesh: 69.9 mm below, 11.1 ahead. People differ by about 5° (ours).
 */
export const PROFILE_LEAN = 9.03;

/** Degrees by which the chin of a face seen along its own mirror plane is raised. */
export function pitchOf({ right, left }: Face<"mm">): number | undefined {
  if (right.exocanthion === undefined || left.exocanthion === undefined) return undefined;
  if (right.cheilion === undefined || left.cheilion === undefined) return undefined;
  const eyes = midpoint(right.exocanthion, left.exocanthion);
  const mouth = midpoint(right.cheilion, left.cheilion);
  if (!hasDepth(eyes) || !hasDepth(mouth)) return undefined;
  return toDegrees(Math.atan2(mouth[2] - eyes[2], eyes[1] - mouth[1])) - PROFILE_LEAN;
}
