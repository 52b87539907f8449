import { type FlatPoint, flatPoint, type Length, type Unit } from "../../units/index.js";
import { requirePositive } from "../../units/internal.js";
import { type Cubic, pointOnCubic } from "./cubic.js";
import { distance } from "../lines/distance.js";

/**
 * A path of cubics under any smooth map, in cubics that stray from the true image by no more than the
 * stated error: where straight lines become bent, as on the photo of a turned head, the control points'
 * images would not do. Pieces are halved until they suffice.
 */
export function mapPathWithin<From extends Unit, To extends Unit>(
  path: readonly Cubic<From>[],
  map: (point: FlatPoint<From>) => FlatPoint<To>,
  error: Length<To>,
): readonly Cubic<To>[] {
  requirePositive("error", error);
  return path.flatMap((cubic) => mapped(cubic, map, error, MOST_HALVINGS));
}

/** A piece is halved at most so often: a map with a kink is closed in to a millionth of it. */
const MOST_HALVINGS = 20;

/** Where a curve through four points strays most, nearly: between them. */
const LOOKED_AT = [1 / 8, 1 / 2, 7 / 8] as const;

function mapped<From extends Unit, To extends Unit>(
  cubic: Cubic<From>,
  map: (point: FlatPoint<From>) => FlatPoint<To>,
  error: Length<To>,
  halvings: number,
): readonly Cubic<To>[] {
  const image = through(
    map(cubic[0]),
    map(pointOnCubic(cubic, 1 / 3)),
    map(pointOnCubic(cubic, 2 / 3)),
    map(cubic[3]),
  );
  const isClose = LOOKED_AT.every(
    (at) => distance(pointOnCubic(image, at), map(pointOnCubic(cubic, at))) <= error,
  );
  if (isClose || halvings === 0) return [image];
  return halves(cubic).flatMap((half) => mapped(half, map, error, halvings - 1));
}

/** The cubic that is at these points at 0, 1/3, 2/3 and 1. */
function through<U extends Unit>(
  from: FlatPoint<U>,
  one: FlatPoint<U>,
  other: FlatPoint<U>,
  to: FlatPoint<U>,
): Cubic<U> {
  const leaving = (axis: 0 | 1): number =>
    (-5 * from[axis] + 18 * one[axis] - 9 * other[axis] + 2 * to[axis]) / 6;
  const arriving = (axis: 0 | 1): number =>
    (2 * from[axis] - 9 * one[axis] + 18 * other[axis] - 5 * to[axis]) / 6;
  return [from, flatPoint(leaving(0), leaving(1)), flatPoint(arriving(0), arriving(1)), to];
}

/** Both halves of a cubic, by de Casteljau. */
function halves<U extends Unit>([from, leaving, arriving, to]: Cubic<U>): readonly Cubic<U>[] {
  const middle = (one: FlatPoint<U>, other: FlatPoint<U>): FlatPoint<U> =>
    flatPoint((one[0] + other[0]) / 2, (one[1] + other[1]) / 2);
  const [first, last] = [middle(from, leaving), middle(arriving, to)];
  const between = middle(leaving, arriving);
  const [before, after] = [middle(first, between), middle(between, last)];
  const at = middle(before, after);
  return [
    [from, first, before, at],
    [at, after, last, to],
  ];
}
