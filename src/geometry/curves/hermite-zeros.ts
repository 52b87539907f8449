import { hermiteAt, type HermiteCurve, type HermiteKnot } from "./hermite.js";
import { rootBetween } from "./root-between.js";

/**
 * Every x at which a curve changes its sign, in order. A curve that only touches 0 has none there.
 */
export function hermiteZeros(curve: HermiteCurve): readonly number[] {
  const height = (x: number): number => hermiteAt(curve, x);
  const stops = curve.flatMap((knot, index) => {
    const next = curve[index + 1];
    return next === undefined ? [knot.x] : [knot.x, ...turnsBetween(knot, next)];
  });
  // Where the curve is 0 at a stop itself, the sign before and after it tells.
  const signed = stops.filter((x) => height(x) !== 0);
  return signed.slice(1).flatMap((to, index) => {
    const from = signed[index] as number;
    const stop = stops.find((x) => x > from && x < to);
    if (height(from) > 0 === height(to) > 0) return [];
    return [stop ?? (rootBetween(from, to, height) as number)];
  });
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
