import { rootBetween } from "../../geometry/internal.js";
import { type CompleteDots, lengthBetween, type Skin } from "../../landmarks/index.js";
import { type Length, otherSide, type Point, type Side } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { placeOnSide, pointOnSide, type SidePlace } from "./side-place.js";

/**
 * What carries the points of a brow to the other side by measure: arch and tail end by the ruler from the
 * other side's own start, the rest along with the dots.
 */
export function carryByRuler(
  { side, dots }: { readonly side: Side; readonly dots: CompleteDots<"mm"> },
  start: Point<"mm">,
  skin: Skin,
): (point: Point<"mm">) => Point<"mm"> {
  const onto = otherSide(side);
  const { upperStart, upperArch, tailEnd } = dots;
  const front = lengthBetween(upperStart, upperArch, skin);
  const tail = lengthBetween(upperArch, tailEnd, skin);
  const ownStart = placeOnSide(start, onto);
  const archHeight = placeOnSide(upperArch, side).height;
  const arch = placeByRuler("front", ownStart, front, archHeight, onto, skin);
  const tailHeight = placeOnSide(tailEnd, side).height;
  const end = placeByRuler("tail", arch, tail, tailHeight, onto, skin);
  const knots = [
    { from: placeOnSide(upperStart, side), to: ownStart },
    { from: placeOnSide(upperArch, side), to: arch },
    { from: placeOnSide(tailEnd, side), to: end },
  ];
  return warp("carryBrow", knots, side, onto);
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
    lengthBetween(pointOnSide(from, side), pointOnSide({ distance, height }, side), skin) - size;
  // Flat skin at one height has the place exactly a size farther out, where rounding decides the sign:
  // twice as far out is too far on any skin.
  const distance = rootBetween(from.distance, from.distance + 2 * size, excess);
  if (distance !== undefined) return { distance, height };
  const need = `${Math.abs(height - from.height).toFixed(1)} mm or more, its rise`;
  refuse("no-solution", "carryBrow", `${stretch} by ruler`, size, need);
}

/** Where one dot of a brow goes, on its own side or on the other. */
export interface Knot {
  readonly from: SidePlace;
  readonly to: SidePlace;
}

/**
 * Takes every point of a brow along with a few of its dots, by straight interpolation over the distance
 * from the midline. What lies at one distance moves as one, so vertical thickness stays.
 */
export function warp(
  where: string,
  knots: readonly Knot[],
  from: Side,
  onto: Side,
): (point: Point<"mm">) => Point<"mm"> {
  requireOrder(where, knots);
  return (point) => {
    const { distance, height } = placeOnSide(point, from);
    const { outward, up } = shiftAt(distance, knots);
    return pointOnSide({ distance: distance + outward, height: height + up }, onto);
  };
}

interface Shift {
  readonly outward: number;
  readonly up: number;
}

function shiftAt(distance: number, knots: readonly Knot[]): Shift {
  const next = knots.findIndex(({ from }) => from.distance >= distance);
  const outer = knots[next === -1 ? knots.length - 1 : next] as Knot;
  const inner = next === -1 ? outer : (knots[Math.max(next - 1, 0)] as Knot);
  const [before, after] = [shiftOf(inner), shiftOf(outer)];
  const width = outer.from.distance - inner.from.distance;
  const share = width === 0 ? 0 : (distance - inner.from.distance) / width;
  return {
    outward: before.outward + share * (after.outward - before.outward),
    up: before.up + share * (after.up - before.up),
  };
}

function shiftOf({ from, to }: Knot): Shift {
  return { outward: to.distance - from.distance, up: to.height - from.height };
}

function requireOrder(where: string, knots: readonly Knot[]): void {
  for (const end of ["from", "to"] as const) {
    const distances = knots.map((knot) => knot[end].distance);
    if (distances.every((one, index) => index === 0 || one > (distances[index - 1] as number))) {
      continue;
    }
    const need = "start, arch, tail end outwards";
    refuse("out-of-range", where, end === "from" ? "dots" : "result", distances, need);
  }
}
