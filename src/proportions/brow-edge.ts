import { type Cubic, polygonArea } from "../geometry/index.js";
import { heightOver, hermiteArea, hermiteAt, partBetween } from "../geometry/internal.js";
import type { Brow, BrowDots, Skin } from "../landmarks/index.js";
import { lengthOfCurve, type Tape, tapeOn } from "../landmarks/internal.js";
import { type Length, length, type Point, type Polyline } from "../units/index.js";
import { BORDER_END } from "./border-end.js";
import { type BrowCurves, startOf } from "./brow-curves.js";

/** What is read on the borders of a brow rather than on its dots. */
export interface BrowEdge {
  /** Height of the lower border over an x; undefined where it is not known. */
  readonly lowerAt: (x: number) => number | undefined;
  /** Along the upper border from one of its dots to another, farther out, by tape. */
  readonly along: (from: Point<"mm">, to: Point<"mm">) => Length<"mm">;
  readonly area: number | undefined;
}

/** The edge of a brow that is drawn through its dots. */
export function edgeOfCurves(
  { outwards, upper, lower, seen, front }: BrowCurves,
  skin: Skin,
): BrowEdge {
  const [top, bottom] = [startOf(seen.upper), startOf(seen.lower)];
  const chord = ((top.y + bottom.y) / 2) * (top.x - bottom.x);
  return {
    lowerAt: (x) => hermiteAt(lower, outwards * x),
    along: ([from], [to]) => lengthOfCurve(upper, outwards * from, outwards * to, outwards, skin),
    area: hermiteArea(seen.upper) - hermiteArea(seen.lower) + chord - offChord(front),
  };
}

/** Signed area between a cubic and its chord, of the areas between its control points. */
function offChord([from, leaving, arriving, to]: Cubic<"mm">): number {
  const areas = [
    polygonArea([from, leaving, arriving, to]),
    polygonArea([from, leaving, to]),
    polygonArea([from, arriving, to]),
  ];
  return 0.3 * areas.reduce((sum, area) => sum + area, 0);
}

/** The edge of a brow as its hair has it; a tape may know some of its legs. */
export function edgeOfHair(
  { upper, lower }: Brow<"mm">,
  skin: Skin,
  tape: Tape = tapeOn(skin),
): BrowEdge {
  return {
    lowerAt: (x) => lower && heightOver(length(x), lower, BORDER_END),
    // A dot may lie off the border, as an arch does: the tape does not leave it.
    along: (from, to) => tape(partBetween(upper, from, to)),
    area: lower && Math.abs(polygonArea([...upper, ...lower.slice().reverse()])),
  };
}

/** The dots of a brow, joined by straight lines. */
export function edgeOfDots(
  { upperBody, lowerStart, lowerBody, lowerArch, tailEnd }: BrowDots<"mm">,
  skin: Skin,
): BrowEdge {
  const lower: Polyline<"mm"> = [lowerStart, lowerBody, lowerArch, tailEnd].filter(
    (dot) => dot !== undefined,
  );
  return {
    lowerAt: (x) => heightOver(length(x), lower),
    along: (from, to) =>
      tapeOn(skin)(
        upperBody && isBetween(upperBody[0], from[0], to[0]) ? [from, upperBody, to] : [from, to],
      ),
    area: undefined,
  };
}

export function isBetween(x: number, from: number, to: number): boolean {
  return x > Math.min(from, to) && x < Math.max(from, to);
}
