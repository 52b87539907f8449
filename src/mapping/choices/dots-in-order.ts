import type { BrowDots, Dot } from "../../landmarks/index.js";
import { placeOnSide } from "../../symmetry/index.js";
import { GeometryError, type Point, type Side } from "../../units/index.js";
import type { Pin } from "./choices.js";

/** Pairs of which the first dot lies nearer the midline. */
const OUTWARD: readonly (readonly [Dot, Dot])[] = [
  ["upperStart", "upperArch"],
  ["upperStart", "upperBody"],
  ["upperBody", "upperArch"],
  ["upperArch", "tailEnd"],
  ["lowerStart", "lowerBody"],
  ["lowerBody", "lowerArch"],
  ["lowerArch", "tailEnd"],
];

/** Pairs of which the first dot lies higher. */
const DOWNWARD: readonly (readonly [Dot, Dot])[] = [
  ["upperStart", "lowerStart"],
  ["upperBody", "lowerBody"],
  ["upperArch", "lowerArch"],
];

/**
 * Refuses dots that are no brow: dots out of order from the start to the tail, a lower dot above
 * its upper one. Where pins are to blame, they are named.
 */
export function requireDotsInOrder(
  where: string,
  dots: BrowDots<"mm">,
  side: Side,
  pins: readonly Pin[],
): void {
  for (const [nearer, farther] of OUTWARD) {
    const [one, other] = [dots[nearer], dots[farther]];
    if (one === undefined || other === undefined) continue;
    if (placeOnSide(one, side).distance < placeOnSide(other, side).distance) continue;
    throw outOfOrder(
      where,
      `${side} ${nearer}`,
      one,
      `nearer the midline than ${farther}`,
      other,
      pins,
    );
  }
  for (const [higher, lower] of DOWNWARD) {
    const [one, other] = [dots[higher], dots[lower]];
    if (one === undefined || other === undefined || one[1] > other[1]) continue;
    throw outOfOrder(where, `${side} ${higher}`, one, `above ${lower}`, other, pins);
  }
}

function outOfOrder(
  where: string,
  field: string,
  value: Point<"mm">,
  relation: string,
  other: Point<"mm">,
  pins: readonly Pin[],
): GeometryError {
  const pinned = pins.map((pin) => `${pin.side} ${pin.dot}`).join(", ");
  return new GeometryError(pins.length > 0 ? "contradicting-pins" : "no-solution", {
    where,
    field,
    value,
    need: `a place ${relation} [${other.join(", ")}]${pins.length > 0 ? `; pinned: ${pinned}` : ""}`,
  });
}
