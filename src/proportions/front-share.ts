import { type Length, type Unit } from "../units/index.js";
import { refuse, requireFinite } from "../units/internal.js";

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
  const where = "frontShare";
  requireFinite(where, "front", front);
  requireFinite(where, "tail", tail);
  if (front < 0 || tail < 0 || front + tail === 0) {
    const [field, value] = front < 0 ? ["front", front] : ["tail", tail];
    refuse("out-of-range", where, field, value, "0 or more, not both 0");
  }
  return front / (front + tail);
}
