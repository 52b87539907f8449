import type { Unit } from "../../units/index.js";
import type { Cubic } from "./cubic.js";
import type { HermiteCurve, HermiteKnot } from "./hermite.js";

/**
 * Cubics as one curve y(x), where they are that: where each goes evenly through x, as those of
 * `cubicsOf` do, and begins where the one before ends. They may run to larger or to smaller x.
 */
export function graphOf<U extends Unit>(path: readonly Cubic<U>[]): HermiteCurve | undefined {
  const [first] = path;
  if (first === undefined) return undefined;
  const isLeftward = first[3][0] < first[0][0];
  const rightward = isLeftward ? path.map(reversed).reverse() : path;
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

function reversed<U extends Unit>([from, leaving, arriving, to]: Cubic<U>): Cubic<U> {
  return [to, arriving, leaving, from];
}
