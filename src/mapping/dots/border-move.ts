import { heightOver } from "../../geometry/internal.js";
import {
  type Brow,
  type BrowDots,
  type CompleteDots,
  type Dot,
  DOTS,
} from "../../landmarks/index.js";
import { BORDER_END, middleOver, outwardsOf } from "../../proportions/internal.js";
import { length } from "../../units/index.js";

/** How far a planned border lies from the hair's; NaN where the hair has none there, nor within 5 mm of a tail's tip. */
export type BorderMove = readonly [up: number, outward: number];

/** The ends of a border: inside it a border goes up and down only, and a dot that slides along it moves nothing. */
const ENDS: readonly Dot[] = ["upperStart", "lowerStart", "tailEnd"];

/**
 * How far the border at a planned dot lies above the hair's in the same place, and at an end how far out;
 * a tail end is told from the middle of the hair.
 */
export function borderMove(
  dot: Dot,
  planned: CompleteDots<"mm">,
  natural: BrowDots<"mm">,
  hair: Brow<"mm">,
): BorderMove {
  const at = planned[dot];
  const x = length<"mm">(at[0]);
  const border = hair[DOTS[dot].border];
  const end = ENDS.includes(dot) ? natural[dot] : undefined;
  const outward = end === undefined ? Number.NaN : outwardsOf(planned) * (x - end[0]);
  if (dot === "tailEnd" && outward > BORDER_END) return [Number.NaN, outward];
  const grown =
    dot === "tailEnd" ? middleOver(x, hair) : border && heightOver(x, border, BORDER_END);
  return [grown === undefined ? Number.NaN : at[1] - grown, outward];
}
