import { polygonArea } from "../geometry/index.js";
import { flatten, graphOf, heightOver, hermiteAt } from "../geometry/internal.js";
import { type Brow, type BrowDots, lengthOf, lengthOfPath, type Skin } from "../landmarks/index.js";
import { type Length, length, mm, type Point, type Polyline } from "../units/index.js";
import { outlineArea } from "./outline-path.js";
import type { Outline } from "./outline.js";

/** The borders of a brow: hair as points tell it, or an outline as exact curves. */
export type BrowBorders = Brow<"mm"> | Outline<"mm">;

/** What is read on the borders of a brow rather than on its dots. */
export interface BrowEdge {
  /** Height of the lower border over an x; undefined where it is not known. */
  readonly lowerAt: (x: number) => number | undefined;
  /** Along the upper border from one of its dots to another, farther out, by tape. */
  readonly along: (from: Point<"mm">, to: Point<"mm">) => Length<"mm">;
  readonly area: number | undefined;
}

/** The edge of a brow as its borders have it; without them its dots, joined by straight lines. */
export function browEdge(
  dots: BrowDots<"mm">,
  borders: BrowBorders | undefined,
  skin: Skin,
): BrowEdge {
  if (borders === undefined) return edgeOfDots(dots, skin);
  return "front" in borders ? edgeOfOutline(borders, skin) : edgeOfHair(borders, skin);
}

function edgeOfOutline(drawn: Outline<"mm">, skin: Skin): BrowEdge {
  const lower = graphOf(drawn.lower);
  return {
    lowerAt: (x) =>
      lower === undefined
        ? heightOver(length(x), flatten(drawn.lower, STRAYS))
        : hermiteAt(lower, x),
    along: ([from], [to]) =>
      lengthOfPath(
        drawn.upper.filter(([[start], , , [end]]) => isBetween((start + end) / 2, from, to)),
        skin,
      ),
    area: outlineArea(drawn),
  };
}

/** Where the lower border of an outline turns back, it is read as a polyline that strays by so much. */
const STRAYS = mm(0.001);

function edgeOfHair({ upper, lower }: Brow<"mm">, skin: Skin): BrowEdge {
  return {
    lowerAt: (x) => lower && heightOver(length(x), lower),
    along: (from, to) =>
      lengthOf([from, ...upper.filter(([x]) => isBetween(x, from[0], to[0])), to], skin),
    area: lower && Math.abs(polygonArea([...upper, ...lower.slice().reverse()])),
  };
}

function edgeOfDots(
  { upperBody, lowerStart, lowerBody, lowerArch, tailEnd }: BrowDots<"mm">,
  skin: Skin,
): BrowEdge {
  const lower: Polyline<"mm"> = [lowerStart, lowerBody, lowerArch, tailEnd].filter(
    (dot) => dot !== undefined,
  );
  return {
    lowerAt: (x) => heightOver(length(x), lower),
    along: (from, to) =>
      lengthOf(
        upperBody && isBetween(upperBody[0], from[0], to[0]) ? [from, upperBody, to] : [from, to],
        skin,
      ),
    area: undefined,
  };
}

function isBetween(x: number, from: number, to: number): boolean {
  return x > Math.min(from, to) && x < Math.max(from, to);
}
