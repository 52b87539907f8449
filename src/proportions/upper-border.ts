import { type HermiteCurve, type HermiteKnot, pchip } from "../geometry/internal.js";
import type { BrowDots, CompleteDots, Dot } from "../landmarks/index.js";
import { refuse, requireFinitePoint } from "../units/internal.js";
import { requireShape, type UpperBorderShape } from "./outline-shape.js";

/** The dots that the upper border runs through. */
export type UpperDots = Required<Pick<BrowDots<"mm">, "upperStart" | "upperArch" | "tailEnd">>;

/**
 * The upper border as heights over the distance from the midline, so that both sides are drawn
 * alike: two cubic pieces that meet at the arch, each rising or falling throughout.
 *
 * The slopes at the arch lie between the soft one, that of PCHIP, and each flank's own chord. Soft is
 * level where the arch is above both ends; where the brow rises or falls throughout it is a mean of
 * both chords, so that a flat brow gets no step.
 */
export function upperBorder(where: string, dots: UpperDots, shape: UpperBorderShape): HermiteCurve {
  const { angularity = ANGULARITY } = shape;
  requireShape(where, "options", shape);
  requireOutwards(where, dots, ["upperStart", "upperArch", "tailEnd"]);
  const [start, arch, tailEnd] = pchip(
    [dots.upperStart, dots.upperArch, dots.tailEnd].map(([x, y]) => [outwardsOf(dots) * x, y]),
  ) as [HermiteKnot, HermiteKnot, HermiteKnot];
  const front = (arch.y - start.y) / (arch.x - start.x);
  const tail = (tailEnd.y - arch.y) / (tailEnd.x - arch.x);
  const before = arch.before + angularity * (front - arch.before);
  const after = arch.after + angularity * (tail - arch.after);
  const startSlope = endSlope(front, before, shape.startSlope);
  const tailSlope = endSlope(tail, after, shape.tailSlope);
  return [
    { ...start, before: startSlope, after: startSlope },
    { ...arch, before, after },
    { ...tailEnd, before: tailSlope, after: tailSlope },
  ];
}

export const ANGULARITY = 0.3;

/** 1 where x grows from start to tail end, the client's left, and −1 on the right. */
export function outwardsOf({ upperStart, tailEnd }: UpperDots): 1 | -1 {
  return tailEnd[0] < upperStart[0] ? -1 : 1;
}

/** Refuses dots that do not follow each other outwards, or are no places at all. */
export function requireOutwards<Name extends Dot>(
  where: string,
  dots: UpperDots & Pick<CompleteDots<"mm">, Name>,
  order: readonly Name[],
): void {
  for (const dot of order) requireFinitePoint(where, `dots.${dot}`, dots[dot]);
  const outwards = outwardsOf(dots);
  order.forEach((dot, index) => {
    const before = order[index - 1];
    if (before !== undefined && outwards * dots[dot][0] <= outwards * dots[before][0]) {
      const need = `an x farther outwards than that of ${before}, ${dots[before][0]}`;
      refuse("inconsistent", where, `dots.${dot}`, dots[dot], need);
    }
  });
}

function endSlope(chord: number, atArch: number, chosen: number | undefined): number {
  if (chosen !== undefined) return chosen * chord;
  const asParabola = 2 * chord - atArch;
  return asParabola * chord > 0 ? asParabola : 0;
}
