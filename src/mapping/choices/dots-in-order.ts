import type { BrowDots, Dot } from "../../landmarks/index.js";
import { STATIONS } from "../../proportions/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import { type Point, type Side } from "../../units/index.js";
import { keysOf, refuse, shownValue } from "../../units/internal.js";
import type { Pin } from "./choices.js";

const OUTWARD: readonly (readonly [Dot, Dot])[] = [
  ["upperStart", "upperArch"],
  ["upperStart", "upperBody"],
  ["upperBody", "upperArch"],
  ["upperArch", "tailEnd"],
  ["lowerStart", "lowerBody"],
  ["lowerBody", "lowerArch"],
  ["lowerArch", "tailEnd"],
];

/** Refuses dots out of order from start to tail, or a lower dot above its upper one; blames pins by name. */
export function requireDotsInOrder(dots: BrowDots<"mm">, side: Side, pins: readonly Pin[]): void {
  const refuseDot = (
    dot: Dot,
    value: Point<"mm">,
    needed: "nearer the midline than" | "above",
    other: Dot,
    at: Point<"mm">,
  ): never => {
    const need = `a place ${needed} the ${named(other)} at ${shownValue(at)}`;
    const code = pins.length > 0 ? "contradicting-pins" : "no-solution";
    return refuse(code, `${side} ${dot}`, value, withPins(need, pins));
  };
  for (const [nearer, farther] of OUTWARD) {
    const [one, other] = [dots[nearer], dots[farther]];
    if (one === undefined || other === undefined) continue;
    if (placeOnSide(one, side).distance < placeOnSide(other, side).distance) continue;
    refuseDot(nearer, one, "nearer the midline than", farther, other);
  }
  for (const station of keysOf(STATIONS)) {
    const { upper, lower } = STATIONS[station];
    const [one, other] = [dots[upper], dots[lower]];
    if (one === undefined || other === undefined || one[1] > other[1]) continue;
    refuseDot(upper, one, "above", lower, other);
  }
}

/** What is needed, and which dots are pinned, where any are. */
export function withPins(need: string, pins: readonly Pin[]): string {
  if (pins.length === 0) return need;
  const pinned = pins.map(({ side, dot }) => `${side} ${named(dot)}`).join(", ");
  return `${need}; pinned: ${pinned}`;
}

/** A dot as an error names it: `"upperArch"` is the arch, `"lowerBody"` the lower body. */
function named(dot: Dot): string {
  return dot
    .replace("upper", "")
    .replace(/(?<=.)[A-Z]/, " $&")
    .toLowerCase();
}
