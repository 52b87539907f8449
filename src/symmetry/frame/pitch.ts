import { midpoint } from "../../geometry/index.js";
import type { Face } from "../../landmarks/index.js";
import { hasDepth } from "../../units/index.js";
import { toDegrees } from "../../units/internal.js";

/**
 * Degrees by which the line from the outer eye corners down to the mouth corners leans forward on a
 * head that is held upright: what every pitch is counted from.
 *
 * Measured by us on the canonical face mesh: 69.9 mm below, 11.1 mm ahead. Profiles of people differ by
 * about 5° (ours).
 */
export const PROFILE_LEAN = 9.03;

/**
 * Degrees by which the chin of a face seen along its own mirror plane is raised: how much more the
 * mouth corners lie ahead of the outer eye corners than those of an average face.
 */
export function pitchOf({ right, left }: Face<"mm">): number | undefined {
  if (right.exocanthion === undefined || left.exocanthion === undefined) return undefined;
  if (right.cheilion === undefined || left.cheilion === undefined) return undefined;
  const eyes = midpoint(right.exocanthion, left.exocanthion);
  const mouth = midpoint(right.cheilion, left.cheilion);
  if (!hasDepth(eyes) || !hasDepth(mouth)) return undefined;
  return toDegrees(Math.atan2(mouth[2] - eyes[2], eyes[1] - mouth[1])) - PROFILE_LEAN;
}
