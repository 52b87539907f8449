import type { Length, Unit } from "../../units/index.js";
import { requirePositive } from "../../units/internal.js";
import { type Cubic, graphOf } from "./cubic.js";
import { flatten } from "./flatten.js";
import { hermiteAt, type HermiteCurve, hermiteDifference, hermiteZeros } from "./hermite.js";
import { sharedArea } from "../polylines/shared-area.js";

/**
 * Area that a closed path of cubics shares with others, each handed in by itself, in square units.
 *
 * Where both lie between two curves y(x), as brows do, it is an integral of cubics, exact but for
 * rounding. Else the paths are read as polygons that stray from them by no more than `error`.
 */
export function overlapWith<U extends Unit>(
  path: readonly Cubic<U>[],
  error: Length<U>,
): (other: readonly Cubic<U>[]) => number {
  requirePositive("error", error);
  const band = bandOf(path);
  return (other) => {
    const otherBand = band && bandOf(other);
    return otherBand === undefined
      ? sharedArea(flatten(other, error), flatten(path, error))
      : bandOverlap(otherBand, band as Band);
  };
}

function bandOverlap(one: Band, other: Band): number {
  const from = Math.max(startOf(one.top), startOf(other.top));
  const to = Math.min(endOf(one.top), endOf(other.top));
  const curves = [one.top, one.bottom, other.top, other.bottom];
  const crossings = [
    [one.top, other.top],
    [one.bottom, other.bottom],
    [one.top, other.bottom],
    [other.top, one.bottom],
  ].flatMap(([upper = [], lower = []]) => hermiteZeros(hermiteDifference(upper, lower)));
  const stops = [...curves.flatMap((curve) => curve.map(({ x }) => x)), ...crossings]
    .filter((x) => x > from && x < to)
    .sort((left, right) => left - right);
  let sum = 0;
  let before = from;
  for (const stop of from < to ? [...stops, to] : []) {
    // A knot of both borders stops once.
    if (stop > before) sum += stretchOverlap(one, other, before, stop);
    before = stop;
  }
  return sum;
}

/** Over a stretch on which no two curves cross, what both share is one cubic high: by Simpson's rule. */
function stretchOverlap(one: Band, other: Band, from: number, to: number): number {
  const middle = (from + to) / 2;
  const [y, otherY] = [hermiteAt(one.top, middle), hermiteAt(other.top, middle)];
  const [low, otherLow] = [hermiteAt(one.bottom, middle), hermiteAt(other.bottom, middle)];
  const high = Math.min(y, otherY) - Math.max(low, otherLow);
  if (high <= 0) return 0;
  const top = y < otherY ? one.top : other.top;
  const bottom = low > otherLow ? one.bottom : other.bottom;
  const height = (x: number): number => hermiteAt(top, x) - hermiteAt(bottom, x);
  return ((to - from) / 6) * (height(from) + 4 * high + height(to));
}

function startOf(curve: HermiteCurve): number {
  return curve[0]?.x ?? 0;
}

function endOf(curve: HermiteCurve): number {
  return curve[curve.length - 1]?.x ?? 0;
}

interface Band {
  readonly top: HermiteCurve;
  readonly bottom: HermiteCurve;
}

/**
 * A closed path as what lies between two curves y(x), where it is that: where every vertical enters it
 * once and leaves it once, and its pieces go evenly through x. Vertical pieces may close it at either
 * end.
 */
function bandOf<U extends Unit>(path: readonly Cubic<U>[]): Band | undefined {
  const pieces = path.filter(([from, leaving, arriving, to]) =>
    [leaving, arriving, to].some(([x]) => x !== from[0]),
  );
  // Begin where a run to the right begins.
  const first = pieces.findIndex(
    (piece, index) => isRightward(piece) && !isRightward(pieces.at(index - 1) ?? piece),
  );
  if (first < 0) return undefined;
  const inOrder = [...pieces.slice(first), ...pieces.slice(0, first)];
  const turn = inOrder.findIndex((piece) => !isRightward(piece));
  return between(graphOf(inOrder.slice(0, turn)), graphOf(inOrder.slice(turn)));
}

function isRightward<U extends Unit>([from, , , to]: Cubic<U>): boolean {
  return to[0] > from[0];
}

/** The band between two curves that do not cross, whichever lies above. */
function between(one: HermiteCurve | undefined, other: HermiteCurve | undefined): Band | undefined {
  if (one === undefined || other === undefined) return undefined;
  const gap = hermiteDifference(one, other);
  if (hermiteZeros(gap).length > 0) return undefined;
  const middle = ((gap[0]?.x ?? 0) + (gap[1]?.x ?? 0)) / 2;
  return hermiteAt(gap, middle) > 0 ? { top: one, bottom: other } : { top: other, bottom: one };
}
