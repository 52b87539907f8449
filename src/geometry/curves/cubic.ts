import { type FlatPoint, flatPoint, type Point, type Unit } from "../../units/index.js";
import type { HermiteCurve } from "./hermite.js";

/** A cubic Bézier curve: it starts at the first point, heads for the second, arrives from the third. */
export type Cubic<U extends Unit> = readonly [
  from: FlatPoint<U>,
  leaving: FlatPoint<U>,
  arriving: FlatPoint<U>,
  to: FlatPoint<U>,
];

/** The point of a cubic at a parameter of 0…1. */
export function pointOnCubic<U extends Unit>(cubic: Cubic<U>, at: number): FlatPoint<U> {
  const rest = 1 - at;
  const weights = [rest ** 3, 3 * rest * rest * at, 3 * rest * at * at, at ** 3];
  let [x, y] = [0, 0];
  cubic.forEach((point, index) => {
    x += (weights[index] as number) * point[0];
    y += (weights[index] as number) * point[1];
  });
  return flatPoint(x, y);
}

/** The straight line between two points as a cubic. */
export function straightCubic<U extends Unit>(from: Point<U>, to: Point<U>): Cubic<U> {
  const between = (share: number): FlatPoint<U> =>
    flatPoint(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
  return [flatPoint(from[0], from[1]), between(1 / 3), between(2 / 3), flatPoint(to[0], to[1])];
}

/** A path of cubics run through from its end. */
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
