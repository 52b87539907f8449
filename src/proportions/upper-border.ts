import {
  hermiteAt,
  type HermiteCurve,
  type HermiteKnot,
  hermiteKnotAt,
  type Stretch,
  softSlope,
} from "../geometry/internal.js";
import type { BrowDots, CompleteDots, Dot } from "../landmarks/index.js";
import { refuse, requireFinitePoint, shownValue } from "../units/internal.js";
import { requireShape, STEEPEST, type UpperBorderShape } from "./outline-shape.js";
import { type Point } from "../units/index.js";

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
export function upperBorder(dots: UpperDots, shape: UpperBorderShape): HermiteCurve {
  const { angularity = ANGULARITY } = shape;
  requireShape("options", shape);
  requireOutwards(dots, ["upperStart", "upperArch", "tailEnd"]);
  const outwards = outwardsOf(dots);
  const { upperStart, upperArch, tailEnd } = dots;
  const stretchOf = (from: Point<"mm">, to: Point<"mm">): Stretch => {
    const width = outwards * (to[0] - from[0]);
    return { width, slope: (to[1] - from[1]) / width };
  };
  const knotAt = ([x, y]: Point<"mm">, before: number, after = before): HermiteKnot => {
    return { x: outwards * x, y, before, after };
  };
  const [front, tail] = [stretchOf(upperStart, upperArch), stretchOf(upperArch, tailEnd)];
  const soft = softSlope(front, tail);
  const before = soft + angularity * (front.slope - soft);
  const after = soft + angularity * (tail.slope - soft);
  return [
    knotAt(upperStart, endSlope(front.slope, before, shape.startSlope)),
    knotAt(upperArch, before, after),
    knotAt(tailEnd, endSlope(tail.slope, after, shape.tailSlope)),
  ];
}

export const ANGULARITY = 0.3;

/** 1 where x grows from start to tail end, the client's left, and −1 on the right. */
export function outwardsOf({ upperStart, tailEnd }: UpperDots): 1 | -1 {
  return tailEnd[0] < upperStart[0] ? -1 : 1;
}

/** Refuses dots that do not follow each other outwards, or are no places at all. */
export function requireOutwards<Name extends Dot>(
  dots: UpperDots & Pick<CompleteDots<"mm">, Name>,
  order: readonly Name[],
): void {
  for (const dot of order) requireFinitePoint(`dots.${dot}`, dots[dot]);
  const outwards = outwardsOf(dots);
  order.forEach((dot, index) => {
    const before = order[index - 1];
    if (before !== undefined && outwards * dots[dot][0] <= outwards * dots[before][0]) {
      const need = `an x farther outwards than ${before}, ${dots[before][0]}`;
      refuse("inconsistent", `dots.${dot}`, dots[dot], need);
    }
  });
}

function endSlope(chord: number, atArch: number, chosen: number | undefined): number {
  if (chosen !== undefined) return chosen * chord;
  const asParabola = 2 * chord - atArch;
  return asParabola * chord > 0 ? asParabola : 0;
}

/** The dots that an upper border is drawn through: that of the body too, where it is known. */
export type BorderDots = UpperDots & Pick<BrowDots<"mm">, "upperBody">;

/**
 * The upper border through the body's dot as well: where that lies off the border of the other three,
 * it is one more knot.
 *
 * What it lies off is added to the front as a parabola that is nothing at start and arch, so that the
 * border moves with the dot, without a jump. Slopes stay between 0 and three times those of the chords
 * beside them: where the dots rise, the border rises. A dot higher than the arch would not let it.
 */
export function borderThroughBody(dots: BorderDots, shape: UpperBorderShape): HermiteCurve {
  const border = upperBorder(dots, shape);
  const { upperBody: body } = dots;
  if (body === undefined) return border;
  requireOutwards({ ...dots, upperBody: body }, ["upperStart", "upperBody", "upperArch"]);
  const x = outwardsOf(dots) * body[0];
  if (Math.abs(hermiteAt(border, x) - body[1]) <= SAME_HEIGHT) return border;
  if (!isOnTheWay(dots, body)) {
    const [start, arch] = [shownValue(dots.upperStart[1]), shownValue(dots.upperArch[1])];
    const need = `a y between those of the start, ${start}, and the arch, ${arch}`;
    refuse("inconsistent", "dots.upperBody", body, need);
  }
  return bent(border, x, body[1], shape);
}

/** Whether a border can rise, or fall, throughout: the body may lie level with the start only. */
export function isOnTheWay(
  { upperStart: [, start], upperArch: [, arch] }: UpperDots,
  [, body]: Point<"mm">,
): boolean {
  if (Math.abs(arch - start) <= SAME_HEIGHT) return Math.abs(body - start) <= SAME_HEIGHT;
  const sign = arch > start ? 1 : -1;
  return sign * (body - start) >= -SAME_HEIGHT && sign * (arch - body) > 0;
}

/** Rounding of a height, in mm. */
export const SAME_HEIGHT = 1e-9;

function bent(
  border: HermiteCurve,
  x: number,
  y: number,
  { angularity = ANGULARITY, startSlope }: UpperBorderShape,
): HermiteCurve {
  const [start, arch, ...tail] = border as [HermiteKnot, HermiteKnot, ...HermiteKnot[]];
  const [before, after] = [x - start.x, arch.x - x];
  const [toBody, toArch] = [(y - start.y) / before, (arch.y - y) / after];
  const unbent = hermiteKnotAt(border, x);
  const bend = (y - unbent.y) / (before * after);
  // A slope that was chosen stays; so does a level arch, an angular one gives way with its flank.
  const leaving = start.after + (startSlope === undefined ? bend * (before + after) : 0);
  const arriving = arch.before - angularity * bend * (before + after);
  const atStart = slopeAlong([toBody], leaving);
  const atBody = slopeAlong([toBody, toArch], unbent.after + bend * (after - before));
  return [
    { ...start, before: atStart, after: atStart },
    { x, y, before: atBody, after: atBody },
    { ...arch, before: slopeAlong([toArch], arriving) },
    ...tail,
  ];
}

/** The slope nearest to a wanted one with which the curves over these chords only rise, or only fall. */
function slopeAlong(chords: readonly number[], wanted: number): number {
  const sign = chords.some((chord) => chord < 0) ? -1 : 1;
  const least = Math.min(...chords.map((chord) => Math.max(sign * chord, 0)));
  return sign * Math.min(Math.max(sign * wanted, 0), STEEPEST * least);
}
