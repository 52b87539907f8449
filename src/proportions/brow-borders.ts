import { flatten, graphOf, heightOver, hermiteAt } from "../geometry/internal.js";
import { type Brow, type BrowDots, lengthOfPath, type Skin } from "../landmarks/index.js";
import { byRuler } from "../landmarks/internal.js";
import { length } from "../units/index.js";
import { type BrowEdge, edgeOfDots, edgeOfHair, isBetween } from "./brow-edge.js";
import { outlineArea } from "./outline-path.js";
import type { Outline } from "./outline.js";

/** The borders of a brow: hair as points tell it, or an outline as exact curves. */
export type BrowBorders = Brow<"mm"> | Outline<"mm">;

/** The edge of a brow as its borders have it; without them its dots, joined by straight lines. */
export function edgeWith(
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
    along: (from, to) => {
      const corner = drawn.upper[0]?.[0];
      // A front that is set back begins behind its dot.
      const before =
        corner && isBetween(corner[0], from[0], to[0]) ? byRuler(from, corner, skin) : 0;
      const pieces = drawn.upper.filter(([[start], , , [end]]) =>
        isBetween((start + end) / 2, from[0], to[0]),
      );
      return length(before + lengthOfPath(pieces, skin));
    },
    area: outlineArea(drawn),
  };
}

/** Where the lower border of an outline turns back, it is read as a polyline that strays by so much. */
const STRAYS = length<"mm">(0.001);
