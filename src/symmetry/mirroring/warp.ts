import { type Point, type Side } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { placeOnSide, pointOnSide, type SidePlace } from "./side-place.js";

/** Where one dot of a brow goes, on its own side or on the other. */
export interface Knot {
  readonly from: SidePlace;
  readonly to: SidePlace;
}

/**
 * Takes every point of a brow along with a few of its dots: between two dots by straight
 * interpolation over the distance from the midline, beyond the first and the last one with them.
 * What lies at one distance moves as one, so vertical thickness stays.
 *
 * @throws GeometryError `out-of-range` where the dots do not stand in order from the midline
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
    const need = "start, arch and tail end in order from the midline outwards";
    refuse("out-of-range", where, end === "from" ? "dots" : "result", distances, need);
  }
}
