import { flatPoint, type Point, type Unit } from "../../units/index.js";
import { between } from "../lines/vector.js";
import { distanceFromLeg, type Leg } from "./polyline.js";

/** To what share of the largest coordinate the distance is exact: far above what rounding costs. */
const EXACTNESS = 1e-12;

/**
 * How far the point of either polyline that is farthest from the other lies from it.
 *
 * The farthest point need not be a vertex: it may lie where another leg becomes the nearest. Stretches
 * of a line are halved until none can hold a farther point than the one found (branch and bound).
 */
export function hausdorffDistance<U extends Unit>(
  one: readonly Leg<U>[],
  other: readonly Leg<U>[],
): number {
  const all = [...one, ...other].flatMap(({ from, to }) => [from[0], from[1], to[0], to[1]]);
  const slack = EXACTNESS * all.reduce((most, at) => Math.max(most, Math.abs(at)), 0);
  return farthest(other, one, farthest(one, other, 0, slack), slack);
}

/** The greatest distance of a point of one line from the other, or what was found already. */
function farthest<U extends Unit>(
  line: readonly Leg<U>[],
  legs: readonly Leg<U>[],
  found: number,
  slack: number,
): number {
  const away = (point: Point<U>): readonly number[] =>
    legs.map((leg) => distanceFromLeg(point, leg));
  const atEnds = line.map(({ to }) => away(to));
  const starts = [away((line[0] as Leg<U>).from), ...atEnds];
  // Vertices first: the farther the farthest of them, the fewer stretches are left to halve.
  const atVertices = starts.reduce((most, distances) => Math.max(most, least(distances)), found);
  return line.reduce(
    (most, { from, to, size }, index) =>
      farthestWithin(
        { from, to, size, legs, atFrom: starts[index] ?? [], atTo: atEnds[index] ?? [] },
        most,
        slack,
      ),
    atVertices,
  );
}

/** A stretch of a line, and how far its ends lie from each leg of the other that may be nearest. */
interface Stretch<U extends Unit> {
  readonly from: Point<U>;
  readonly to: Point<U>;
  readonly size: number;
  readonly legs: readonly Leg<U>[];
  readonly atFrom: readonly number[];
  readonly atTo: readonly number[];
}

function farthestWithin<U extends Unit>(
  { from, to, size, legs, atFrom, atTo }: Stretch<U>,
  found: number,
  slack: number,
): number {
  // Along a straight line the distance from a leg is convex: nowhere more than at one of the ends.
  const bound = least(legs.map((_, leg) => Math.max(atFrom[leg] as number, atTo[leg] as number)));
  if (bound <= found + slack) return found;
  // A leg that is farther than the bound all the way is never the nearest.
  const near = legs.flatMap((_, leg) =>
    ((atFrom[leg] as number) + (atTo[leg] as number) - size) / 2 <= bound ? [leg] : [],
  );
  const middle = flatPoint<U>(...between(from, to, 0.5));
  const nearLegs = near.map((leg) => legs[leg] as Leg<U>);
  const atMiddle = nearLegs.map((leg) => distanceFromLeg(middle, leg));
  const half = { size: size / 2, legs: nearLegs };
  const nearFrom = near.map((leg) => atFrom[leg] as number);
  const nearTo = near.map((leg) => atTo[leg] as number);
  const first = { ...half, from, to: middle, atFrom: nearFrom, atTo: atMiddle };
  const second = { ...half, from: middle, to, atFrom: atMiddle, atTo: nearTo };
  const atLeast = Math.max(found, least(atMiddle));
  return farthestWithin(second, farthestWithin(first, atLeast, slack), slack);
}

function least(numbers: readonly number[]): number {
  return numbers.reduce((smallest, number) => Math.min(smallest, number), Infinity);
}
