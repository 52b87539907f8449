import { midpoint } from "../geometry/index.js";
import type { Face } from "../landmarks/index.js";
import {
  deepPoint,
  GeometryError,
  hasDepth,
  type Point,
  requirePositive,
  type Scale,
} from "../units/index.js";
import { fitMidline } from "./fit-midline.js";
import type { Midline } from "./midline.js";
import { leftIsPositive, senseOf } from "./sense-of-face.js";
import type { Turning } from "./turning.js";

/**
 * The conversion between one photo and the face on it: a value that knows both ends.
 *
 * It turns the face upright, so that the midline is x = 0 and y points up, and reverses orientation.
 */
export interface FaceFrame {
  readonly midline: Midline<"px">;
  readonly scale: Scale;
  /** Where the face space has its origin; with depth where both inner eye corners have it. */
  readonly origin: Point<"px">;
  /** Present where a turned head is looked at from its own front: see {@link turnToFront}. */
  readonly turning?: Turning;
}

/** How {@link faceFrame} works. */
export interface FaceFrameOptions {
  /** Default: {@link fitMidline} of the face. */
  readonly midline?: Midline<"px">;
}

/**
 * The frame of a face on a photo: its midline and its scale.
 *
 * The photo must not be mirrored; the origin of depth is the mean of the inner eye corners.
 *
 * @throws GeometryError `sides-swapped` for a mirrored photo, or y that points up; `out-of-range` for
 * a scale that is not more than 0; and what {@link fitMidline} throws
 *
 * @example
 * ```ts
 * import { type Face, faceFrame, mm, px, scaleFromReference, toFace } from "brow-geometry";
 * const face: Face<"px"> = {
 *   right: { endocanthion: px([460, 500]), cheilion: px([450, 690]) },
 *   left: { endocanthion: px([560, 500]), cheilion: px([570, 690]) },
 *   midline: { subnasale: px([510, 640]) },
 * };
 * const scale = scaleFromReference(px([0, 0]), px([300, 0]), mm(100));
 * toFace(px([630, 410]), faceFrame(face, scale)); // → [40.0, 30.0]
 * ```
 */
export function faceFrame(
  face: Face<"px">,
  scale: Scale,
  options: FaceFrameOptions = {},
): FaceFrame {
  requirePositive("faceFrame", "scale.factor", scale.factor);
  const midline = options.midline ?? fitMidline(face);
  requireUnmirrored("faceFrame", face, midline);
  const [x, y] = midline.line.through;
  const depth = depthOfEyes(face);
  return {
    midline,
    scale,
    origin: depth === undefined ? midline.line.through : deepPoint(x, y, depth),
  };
}

function depthOfEyes({ right, left }: Face<"px">): number | undefined {
  if (right.endocanthion === undefined || left.endocanthion === undefined) return undefined;
  const middle = midpoint(right.endocanthion, left.endocanthion);
  return hasDepth(middle) ? middle[2] : undefined;
}

/** Refuses a photo in which the client's left is not where an unmirrored one, y down, has it. */
export function requireUnmirrored(
  where: string,
  face: Face<"px">,
  { line: { direction } }: Midline<"px">,
): void {
  if (leftIsPositive(direction, senseOf(face))) return;
  throw new GeometryError("sides-swapped", {
    where,
    field: "face",
    value: [face.right.endocanthion, face.left.endocanthion],
    need: "an unmirrored photo, y down, with the client's own right and left",
  });
}
