import { rootBetween } from "../../geometry/internal.js";
import { type CompleteDots, type Skin } from "../../landmarks/index.js";
import { byRuler } from "../../landmarks/internal.js";
import { type Length, otherSide, type Point, type Side } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { placeOnSide, pointOnSide, type SidePlace } from "./side-place.js";

/**
 * What carries the points of a brow to the other side by measure: arch and tail end by the ruler from the
 * other side's own start, the rest along with the dots, by straight interpolation over the distance from
 * the midline. What lies at one distance moves as one, so vertical thickness stays.
 *
 * @param dots start, arch and tail end in this order from the midline
 */
export function carryByRuler(
  { side, dots }: { readonly side: Side; readonly dots: CompleteDots<"mm"> },
  start: Point<"mm">,
  skin: Skin,
): (point: Point<"mm">) => Point<"mm"> {
  const onto = otherSide(side);
  const { upperStart, upperArch, tailEnd } = dots;
  const [from, peak, end] = [upperStart, upperArch, tailEnd].map((dot) =>
    placeOnSide(dot, side),
  ) as [SidePlace, SidePlace, SidePlace];
  const front = byRuler(upperStart, upperArch, skin);
  const tail = byRuler(upperArch, tailEnd, skin);
  const ownStart = placeOnSide(start, onto);
  const arch = placeByRuler("front", ownStart, front, peak.height, onto, skin);
  const ownEnd = placeByRuler("tail", arch, tail, end.height, onto, skin);
  return (point) => {
    const { distance, height } = placeOnSide(point, side);
    const [alongFront, alongTail] = [shareOf(distance, from, peak), shareOf(distance, peak, end)];
    const shift = (axis: keyof SidePlace): number => {
      const [first, middle, last] = [
        ownStart[axis] - from[axis],
        arch[axis] - peak[axis],
        ownEnd[axis] - end[axis],
      ];
      return first + alongFront * (middle - first) + alongTail * (last - middle);
    };
    return pointOnSide(
      { distance: distance + shift("distance"), height: height + shift("height") },
      onto,
    );
  };
}

/** How much of the way from one place to the next lies nearer the midline, from 0 to 1. */
function shareOf(distance: number, from: SidePlace, to: SidePlace): number {
  const share = (distance - from.distance) / (to.distance - from.distance);
  return Math.min(Math.max(share, 0), 1);
}

/** The place at a height, farther out than another, that is so far from it by ruler. */
function placeByRuler(
  stretch: "front" | "tail",
  from: SidePlace,
  size: Length<"mm">,
  height: number,
  side: Side,
  skin: Skin,
): SidePlace {
  const excess = (distance: number): number =>
    byRuler(pointOnSide(from, side), pointOnSide({ distance, height }, side), skin) - size;
  // Flat skin at one height has the place exactly a size farther out, where rounding decides the sign:
  // twice as far out is too far on any skin.
  const distance = rootBetween(from.distance, from.distance + 2 * size, excess);
  if (distance !== undefined) return { distance, height };
  const need = `${Math.abs(height - from.height).toFixed(1)} mm or more, its rise`;
  refuse("no-solution", `${stretch} by ruler`, size, need);
}
