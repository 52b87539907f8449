import { refusingAs } from "../../units/internal.js";
import { type Length, length, type Point, type Polyline, type Unit } from "../../units/index.js";
import { type Leg, legsOf, pointAlong, polygonArea } from "./polyline.js";
import { difference } from "../lines/vector.js";

/**
 * Area between two polylines that run the same way, in square units: each stretch between two of
 * their crossings counts, whichever lies above; their ends are joined by straight lines.
 *
 * Crossings count in the order in which both lines meet them; lines that turn back on each other are
 * not what this is for.
 *
 * @throws GeometryError as {@link pointAlong}
 *
 * @example
 * ```ts
 * import { areaBetween } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * areaBetween(mm([[0, 0], [40, 0]]), mm([[0, 2], [40, 2]])); // → 80
 * areaBetween(mm([[0, 0], [40, 0]]), mm([[0, 2], [40, -2]])); // → 40
 * ```
 */
export function areaBetween<U extends Unit>(one: Polyline<U>, other: Polyline<U>): number {
  return refusingAs("areaBetween", () => {
    const legs = legsOf(one);
    const otherLegs = legsOf(other);
    const crossings = inBothOrders(crossingsOf(legs, otherLegs));
    const stops = [
      { one: 0, other: 0 },
      ...crossings,
      { one: sizeOf(legs), other: sizeOf(otherLegs) },
    ];
    let area = 0;
    for (let index = 1; index < stops.length; index += 1) {
      const from = stops[index - 1] as Crossing;
      const to = stops[index] as Crossing;
      const there = stretchOf(one, legs, from.one, to.one);
      const back = stretchOf(other, otherLegs, from.other, to.other);
      area += Math.abs(polygonArea([...there, ...[...back].reverse()]));
    }
    return area;
  });
}

/** Where two lines cross, as distances along both. */
interface Crossing {
  readonly one: number;
  readonly other: number;
}

function crossingsOf<U extends Unit>(
  legs: readonly Leg<U>[],
  otherLegs: readonly Leg<U>[],
): readonly Crossing[] {
  return legs
    .flatMap((leg) =>
      otherLegs.flatMap((otherLeg): readonly Crossing[] => {
        const [x, y] = difference(otherLeg.from, leg.from);
        const [legX, legY] = difference(leg.to, leg.from);
        const [otherX, otherY] = difference(otherLeg.to, otherLeg.from);
        const turn = legX * otherY - legY * otherX;
        if (turn === 0) return [];
        const share = (x * otherY - y * otherX) / turn;
        const otherShare = (x * legY - y * legX) / turn;
        if (share < 0 || share > 1 || otherShare < 0 || otherShare > 1) return [];
        const one = leg.before + share * leg.size;
        return [{ one, other: otherLeg.before + otherShare * otherLeg.size }];
      }),
    )
    .sort((first, second) => first.one - second.one);
}

/** The crossings that come in the same order on both lines, as many as can be had. */
function inBothOrders(crossings: readonly Crossing[]): readonly Crossing[] {
  const chains: (readonly Crossing[])[] = [];
  for (const crossing of crossings) {
    const longest = chains.reduce<readonly Crossing[]>((best, chain) => {
      const last = chain[chain.length - 1] as Crossing;
      return last.other <= crossing.other && chain.length > best.length ? chain : best;
    }, []);
    chains.push([...longest, crossing]);
  }
  return chains.reduce<readonly Crossing[]>(
    (best, chain) => (chain.length > best.length ? chain : best),
    [],
  );
}

/** A polyline's own points between two places on it, and the places themselves. */
function stretchOf<U extends Unit>(
  polyline: Polyline<U>,
  legs: readonly Leg<U>[],
  from: number,
  to: number,
): Polyline<U> {
  const corners = legs.filter(({ before }) => before > from && before < to).map((leg) => leg.from);
  const end = (along: number): Point<U> => pointAlong(polyline, length(along)).at;
  return [end(from), ...corners, end(to)];
}

function sizeOf<U extends Unit>(legs: readonly Leg<U>[]): Length<U> {
  const last = legs[legs.length - 1] as Leg<U>;
  return length(last.before + last.size);
}
