import { integrateRow } from "./integrate.js";
import { rootBetween } from "./root-between.js";

/** A knot of a curve y(x): its place, and the slope on either side, equal where the curve is smooth. */
export interface HermiteKnot {
  readonly x: number;
  readonly y: number;
  readonly before: number;
  readonly after: number;
}

/**
 * A curve y(x) in cubic pieces: between neighbouring knots the cubic that has their places and
 * slopes, beyond the first and the last the straight line along the slope there. The x of the knots
 * increase strictly.
 */
export type HermiteCurve = readonly HermiteKnot[];

/**
 * Place and slope of a curve at an x; at a knot, the slope towards smaller and towards larger x.
 *
 * @param next the index of the first knot that does not lie before it, where that is known
 */
export function hermiteKnotAt(
  curve: HermiteCurve,
  x: number,
  next: number = knotFrom(curve, x),
): HermiteKnot {
  const [from, to] = [curve[next - 1], curve[next]];
  if (to?.x === x) return to;
  if (from === undefined || to === undefined) {
    const slope = from?.after ?? to?.before ?? 0;
    return { x, y: hermiteAt(curve, x), before: slope, after: slope };
  }
  const width = to.x - from.x;
  const part = (x - from.x) / width;
  const chord = (to.y - from.y) / width;
  const second = 3 * chord - 2 * from.after - to.before;
  const third = from.after + to.before - 2 * chord;
  const y = from.y + width * part * (from.after + part * (second + part * third));
  const slope = from.after + part * (2 * second + part * 3 * third);
  return { x, y, before: slope, after: slope };
}

/** The first knot that does not lie before an x. */
function knotFrom(curve: HermiteCurve, x: number): number {
  let next = 0;
  while (next < curve.length && (curve[next] as HermiteKnot).x < x) next += 1;
  return next;
}

export function hermiteAt(curve: HermiteCurve, x: number): number {
  const next = knotFrom(curve, x);
  const [from, to] = [curve[next - 1], curve[next]];
  if (to?.x === x) return to.y;
  if (from === undefined) return to === undefined ? 0 : to.y + to.before * (x - to.x);
  if (to === undefined) return from.y + from.after * (x - from.x);
  const width = to.x - from.x;
  const part = (x - from.x) / width;
  const chord = (to.y - from.y) / width;
  // y = from + width · part · (m₀ + part · (c₂ + part · c₃)), from the slopes at both ends.
  const second = 3 * chord - 2 * from.after - to.before;
  const third = from.after + to.before - 2 * chord;
  return from.y + width * part * (from.after + part * (second + part * third));
}

/** Signed area between a curve and the axis of x, from its first knot to its last. */
export function hermiteArea(curve: HermiteCurve): number {
  let sum = 0;
  for (let index = 1; index < curve.length; index += 1) {
    const [from, to] = [curve[index - 1] as HermiteKnot, curve[index] as HermiteKnot];
    const width = to.x - from.x;
    sum += width * ((from.y + to.y) / 2 + (width * (from.after - to.before)) / 12);
  }
  return sum;
}

/**
 * Length of the pieces of a curve whose middles lie between two x; with a `rise`, the depth gained for each
 * step of x, the length of the curve over it on that surface.
 */
export function hermiteLength(
  curve: HermiteCurve,
  low: number,
  high: number,
  rise: (x: number) => number,
): number {
  let sum = 0;
  for (let index = 1; index < curve.length; index += 1) {
    const [from, to] = [curve[index - 1] as HermiteKnot, curve[index] as HermiteKnot];
    const middle = (from.x + to.x) / 2;
    if (middle > low && middle < high) sum += pieceLength(from, to, rise);
  }
  return sum;
}

function pieceLength(from: HermiteKnot, to: HermiteKnot, rise: (x: number) => number): number {
  const width = to.x - from.x;
  const chord = (to.y - from.y) / width;
  const second = 3 * chord - 2 * from.after - to.before;
  const third = from.after + to.before - 2 * chord;
  return integrateRow(from.x, to.x, (row, size) => {
    for (let index = 0; index < size; index += 1) {
      const x = row[index] as number;
      const part = (x - from.x) / width;
      const slope = from.after + part * (2 * second + part * 3 * third);
      const depth = rise(x);
      row[index] = Math.sqrt(1 + slope * slope + depth * depth);
    }
  });
}

/**
 * One curve less another, over the other's knots: again in cubic pieces, with a knot wherever either
 * has one, so that nothing is lost.
 */
export function hermiteDifference(of: HermiteCurve, less: HermiteCurve): HermiteCurve {
  const first = less[0]?.x ?? 0;
  const last = less[less.length - 1]?.x ?? 0;
  const knots: HermiteKnot[] = [];
  let [next, nextLess] = [0, 0];
  while (next < of.length || nextLess < less.length) {
    const x = Math.min(of[next]?.x ?? Infinity, less[nextLess]?.x ?? Infinity);
    if (!(x < first || x > last)) {
      const [one, other] = [hermiteKnotAt(of, x, next), hermiteKnotAt(less, x, nextLess)];
      knots.push({
        x,
        y: one.y - other.y,
        before: one.before - other.before,
        after: one.after - other.after,
      });
    }
    while (next < of.length && !((of[next] as HermiteKnot).x > x)) next += 1;
    while (nextLess < less.length && !((less[nextLess] as HermiteKnot).x > x)) nextLess += 1;
  }
  return knots;
}

/** Every x at which a curve changes its sign, in order; where it only touches 0 it does not. */
export function hermiteZeros(curve: HermiteCurve): readonly number[] {
  const height = (x: number): number => hermiteAt(curve, x);
  const zeros: number[] = [];
  let before: { readonly x: number; readonly isAbove: boolean } | undefined;
  // Where the curve is 0 at a stop itself, the sign before and after it tells.
  let touched: number | undefined;
  const stopAt = (x: number, y: number): void => {
    if (y === 0) {
      touched ??= x;
      return;
    }
    const isAbove = y > 0;
    if (before !== undefined && before.isAbove !== isAbove) {
      zeros.push(touched ?? (rootBetween(before.x, x, height) as number));
    }
    [before, touched] = [{ x, isAbove }, undefined];
  };
  curve.forEach((knot, index) => {
    stopAt(knot.x, knot.y);
    const next = curve[index + 1];
    if (next === undefined || staysOnOneSide(knot, next)) return;
    for (const x of turnsBetween(knot, next)) stopAt(x, height(x));
  });
  return zeros;
}

/** Whether a cubic piece is nowhere 0: its control points lie above 0, or all below. */
function staysOnOneSide(from: HermiteKnot, to: HermiteKnot): boolean {
  const third = (to.x - from.x) / 3;
  const [leaving, arriving] = [from.y + third * from.after, to.y - third * to.before];
  return from.y > 0
    ? leaving > 0 && arriving > 0 && to.y > 0
    : from.y < 0 && leaving < 0 && arriving < 0 && to.y < 0;
}

/** Where a cubic piece turns from rising to falling or back. */
function turnsBetween(from: HermiteKnot, to: HermiteKnot): readonly number[] {
  const width = to.x - from.x;
  const chord = (to.y - from.y) / width;
  const second = 3 * chord - 2 * from.after - to.before;
  const third = from.after + to.before - 2 * chord;
  return quadraticRoots(3 * third, 2 * second, from.after)
    .filter((part) => part > 0 && part < 1)
    .map((part) => from.x + part * width);
}

/** Roots of a t² + b t + c in order, without the loss of digits where b is large. */
function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  const under = b * b - 4 * a * c;
  if (under <= 0) return [];
  const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  const roots = half === 0 ? [] : [c / half];
  return (a === 0 ? roots : [...roots, half / a]).sort((one, other) => one - other);
}
