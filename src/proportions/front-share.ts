import { type Length, type Unit } from "../units/index.js";
import { refusingAs, refuse, requireFinite } from "../units/internal.js";

/**
 * The front's share of a brow: front / (front + tail), 0…1. Artists lay out the front on two thirds
 * and the tail on one third, by ruler (trade practice, no source).
 *
 * @throws GeometryError `not-finite`; `out-of-range` where a length is negative or both are 0
 *
 * @example
 * ```ts
 * import { frontShare } from "brow-geometry/proportions";
 * import { mm } from "brow-geometry";
 * frontShare(mm(33), mm(16.5)); // → 0.6667
 * ```
 */
export function frontShare<U extends Unit>(front: Length<U>, tail: Length<U>): number {
  return refusingAs("frontShare", () => shareOf(front, tail));
}

/** A front's share, asked for by another function, thousands of times for a plan. */
export function shareOf<U extends Unit>(front: Length<U>, tail: Length<U>): number {
  requireFinite("front", front);
  requireFinite("tail", tail);
  if (front < 0 || tail < 0 || front + tail === 0) {
    const [field, value] = front < 0 ? ["front", front] : ["tail", tail];
    refuse("out-of-range", field, value, "0 or more, not both 0");
  }
  return front / (front + tail);
}
