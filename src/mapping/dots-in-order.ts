import type { CompleteMarks, Dot } from "../landmarks/index.js";
import { GeometryError, type Side } from "../units/index.js";
import type { Pin } from "./choices.js";
import { placeOf } from "./place.js";

/** Pairs of which the first dot lies nearer the midline. */
const OUTWARD: readonly (readonly [Dot, Dot])[] = [
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
 * Refuses marks that are no brow: dots out of order from the start to the tail, a lower dot above
 * its upper one. Where pins are to blame, they are named.
 */
export function requireDotsInOrder(
  where: string,
  marks: CompleteMarks<"mm">,
  side: Side,
  pins: readonly Pin[],
): void {
  const refuse = (field: Dot, value: Dot, need: string): never => {
    const pinned = pins.filter((pin) => pin.side === side || !hasPin(pins, side, pin.dot));
    throw new GeometryError(pinned.length > 0 ? "contradicting-pins" : "no-solution", {
      where,
      field: `${side} ${field}`,
      value: marks[field],
      need: `a place ${need} ${value} [${marks[value].join(", ")}]${
        pinned.length > 0 ? `; pinned: ${pinned.map(({ dot }) => dot).join(", ")}` : ""
      }`,
    });
  };
  for (const [nearer, farther] of OUTWARD) {
    if (placeOf(marks[nearer], side).distance >= placeOf(marks[farther], side).distance) {
      refuse(nearer, farther, "nearer the midline than");
    }
  }
  for (const [higher, lower] of DOWNWARD) {
    if (marks[higher][1] <= marks[lower][1]) refuse(higher, lower, "above");
  }
}

function hasPin(pins: readonly Pin[], side: Side, dot: Dot): boolean {
  return pins.some((pin) => pin.side === side && pin.dot === dot);
}
