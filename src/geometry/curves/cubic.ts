import { type FlatPoint, flatPoint, type Point, type Unit } from "../../units/index.js";
import type { HermiteCurve, HermiteKnot } from "./hermite.js";

/** A cubic Bézier curve: it starts at the first point, heads for the second, arrives from the third. */
export type Cubic<U extends Unit> = readonly [
  from: FlatPoint<U>,
  leaving: FlatPoint<U>,
  arriving: FlatPoint<U>,
  to: FlatPoint<U>,
];

/** `at` is a parameter of 0…1. */
export function pointOnCubic<U extends Unit>(cubic: Cubic<U>, at: number): FlatPoint<U> {
  const [from, leaving, arriving, to] = cubic;
  const rest = 1 - at;
  const [first, second] = [rest * rest * rest, 3 * rest * rest * at];
  const [third, fourth] = [3 * rest * at * at, at * at * at];
  return flatPoint(
    first * from[0] + second * leaving[0] + third * arriving[0] + fourth * to[0],
    first * from[1] + second * leaving[1] + third * arriving[1] + fourth * to[1],
  );
}

export function straightCubic<U extends Unit>(from: Point<U>, to: Point<U>): Cubic<U> {
  const between = (share: number): FlatPoint<U> =>
    flatPoint(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
  return [flatPoint(from[0], from[1]), between(1 / 3), between(2 / 3), flatPoint(to[0], to[1])];
}

export function reversePath<U extends Unit>(path: readonly Cubic<U>[]): readonly Cubic<U>[] {
  return path
    .map(([from, leaving, arriving, to]): Cubic<U> => [to, arriving, leaving, from])
    .reverse();
}

/**
 * A path of cubics with every point mapped: exact where the map keeps straight lines straight and
 * even, as turning, mirroring and scaling do.
 */
export function mapPath<From extends Unit, To extends Unit>(
  path: readonly Cubic<From>[],
  map: (point: FlatPoint<From>) => FlatPoint<To>,
): readonly Cubic<To>[] {
  return path.map(([from, leaving, arriving, to]): Cubic<To> => [
    map(from),
    map(leaving),
    map(arriving),
    map(to),
  ]);
}

/** The pieces of a curve y(x) as Bézier curves: the same curve exactly. */
export function cubicsOf<U extends Unit>(curve: HermiteCurve): readonly Cubic<U>[] {
  return curve.slice(1).map((to, index): Cubic<U> => {
    const from = curve[index] as HermiteCurve[number];
    const third = (to.x - from.x) / 3;
    return [
      flatPoint(from.x, from.y),
      flatPoint(from.x + third, from.y + third * from.after),
      flatPoint(to.x - third, to.y - third * to.before),
      flatPoint(to.x, to.y),
    ];
  });
}

/**
 * Cubics as one curve y(x), where they are that: where each goes evenly through x, as those of
 * `cubicsOf` do, and begins where the one before ends. They may run to larger or to smaller x.
 */
export function graphOf<U extends Unit>(path: readonly Cubic<U>[]): HermiteCurve | undefined {
  const [first] = path;
  if (first === undefined) return undefined;
  const isLeftward = first[3][0] < first[0][0];
  const rightward = isLeftward ? reversePath(path) : path;
  const knots: HermiteKnot[] = [];
  for (const cubic of rightward) {
    const [from, leaving, arriving, to] = cubic;
    if (to[0] <= from[0] || !goesEvenly(cubic)) return undefined;
    const third = (to[0] - from[0]) / 3;
    const after = (leaving[1] - from[1]) / third;
    const before = (to[1] - arriving[1]) / third;
    const last = knots.pop() ?? { x: from[0], y: from[1], before: after };
    if (last.x !== from[0] || last.y !== from[1]) return undefined;
    knots.push({ ...last, after }, { x: to[0], y: to[1], before, after: before });
  }
  return knots;
}

function goesEvenly<U extends Unit>([[from], [leaving], [arriving], [to]]: Cubic<U>): boolean {
  const third = (to - from) / 3;
  const strays = Math.max(Math.abs(leaving - from - third), Math.abs(to - arriving - third));
  return strays <= ROUNDING * Math.abs(third);
}

/** How unevenly control points may stand for a straight piece that was rounded. */
const ROUNDING = 1e-9;
