import { rootBetween } from "../geometry/index.js";
import { depthAt, type Skin } from "../landmarks/index.js";
import {
  deepPoint,
  flatPoint,
  GeometryError,
  hasDepth,
  type Length,
  length,
  type Point,
  toRadians,
} from "../units/index.js";

/** A head's yaw that is taken out of what is read: the head is looked at from its own front. */
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
   * Degrees by which the line from glabella to menton leans out of the frontal plane, positive where
   * the chin comes forward. It is not taken out; absent where either has no depth.
   */
  readonly pitch?: number;
  /** Where a point without depth lies. */
  readonly skin: Skin;
}

/** A point of the face as the photo shows it, in millimetres, as it is seen from the front. */
export function turnForward(point: Point<"mm">, turning: Turning): Point<"mm"> {
  const { cosine, sine } = turnOf(turning);
  if (hasDepth(point)) {
    const [x, y, depth] = point;
    return deepPoint(x * cosine - depth * sine, y, x * sine + depth * cosine);
  }
  const [seen, y] = point;
  const miss = (x: number): number => x * cosine + depthOver(x, y, turning) * sine - seen;
  const x = rootBetween(seen - REACH, seen + REACH, miss);
  if (x === undefined) {
    throw new GeometryError("no-solution", {
      where: "toFace",
      field: "point",
      value: [seen, y],
      need: "a place on the skin of the face, or depth of its own",
    });
  }
  return flatPoint(x, y);
}

/** The way back: a point without depth is lifted onto the skin first. */
export function turnAside(point: Point<"mm">, turning: Turning): Point<"mm"> {
  const { cosine, sine } = turnOf(turning);
  const [x, y] = point;
  if (!hasDepth(point)) return flatPoint(x * cosine + depthOver(x, y, turning) * sine, y);
  const depth = point[2];
  return deepPoint(x * cosine + depth * sine, y, depth * cosine - x * sine);
}

/** Millimetres by which turning a face by a few degrees moves no point of its skin sideways. */
const REACH = 25;

/**
 * Standard uncertainty of the place of a point, sideways, that comes from having turned the head:
 * from the yaw, and from the scale of depth, which also enters the yaw. Equal and opposite
 * distances from the midline share it: add it to a difference between the sides twice.
 *
 * @example
 * ```ts
 * import { mm, turningUncertainty } from "brow-geometry";
 * const skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 } as const;
 * const turning = { yaw: 4, yawU: 0.4, depthU: 0.1, yawPerDepth: 2, pivot: mm(-10), skin };
 * turningUncertainty(mm([55, 18]), turning); // → 0.17
 * ```
 */
export function turningUncertainty(at: Point<"mm">, turning: Turning): Length<"mm"> {
  const { cosine, sine } = turnOf(turning);
  const depth = (hasDepth(at) ? at[2] : depthOver(at[0], at[1], turning)) - turning.pivot;
  const seenDepth = depth * cosine - at[0] * sine;
  const fromDepth = seenDepth * sine + depth * toRadians(turning.yawPerDepth);
  return length(Math.hypot(depth * toRadians(turning.yawU), turning.depthU * fromDepth));
}

function depthOver(x: number, y: number, { skin }: Turning): number {
  return depthAt(flatPoint<"mm">(x, y), skin);
}

function turnOf({ yaw }: Turning): { readonly cosine: number; readonly sine: number } {
  const angle = toRadians(yaw);
  return { cosine: Math.cos(angle), sine: Math.sin(angle) };
}
