import type { Unit } from "../units/index.js";
import type { Cubic } from "./cubic.js";
import { hermiteAt, type HermiteCurve, hermiteDifference, type HermiteKnot } from "./hermite.js";
import { hermiteZeros } from "./hermite-zeros.js";

/** What lies between two curves over the same stretch of x. */
export interface Band {
  readonly top: HermiteCurve;
  readonly bottom: HermiteCurve;
}

/**
 * A closed path as what lies between two curves y(x), where it is that: where every vertical enters it
 * once and leaves it once, and its pieces go evenly through x, as those of `cubicsOf` do.
 * Vertical pieces may close it at either end.
 */
export function bandOf<U extends Unit>(path: readonly Cubic<U>[]): Band | undefined {
  const pieces = path.filter(([from, leaving, arriving, to]) =>
    [leaving, arriving, to].some(([x]) => x !== from[0]),
  );
  if (pieces.length < 2 || !pieces.every(goesEvenly)) return undefined;
  // Begin where a run to the right begins.
  const first = pieces.findIndex(
    (piece, index) => isRightward(piece) && !isRightward(pieces.at(index - 1) ?? piece),
  );
  if (first < 0) return undefined;
  const inOrder = [...pieces.slice(first), ...pieces.slice(0, first)];
  const turn = inOrder.findIndex((piece) => !isRightward(piece));
  const [there, back] = [inOrder.slice(0, turn), inOrder.slice(turn)];
  if (back.some(isRightward)) return undefined;
  return between(curveOf(there), curveOf(back.map(reversed).reverse()));
}

function goesEvenly<U extends Unit>([[from], [leaving], [arriving], [to]]: Cubic<U>): boolean {
  const third = (to - from) / 3;
  const strays = Math.max(Math.abs(leaving - from - third), Math.abs(to - arriving - third));
  return strays <= ROUNDING * Math.abs(third);
}

function isRightward<U extends Unit>([from, , , to]: Cubic<U>): boolean {
  return to[0] > from[0];
}

function reversed<U extends Unit>([from, leaving, arriving, to]: Cubic<U>): Cubic<U> {
  return [to, arriving, leaving, from];
}

/** The curve that pieces make, where each begins where the last one ends. */
function curveOf<U extends Unit>(pieces: readonly Cubic<U>[]): HermiteCurve | undefined {
  const knots: HermiteKnot[] = [];
  for (const [from, leaving, arriving, to] of pieces) {
    const third = (to[0] - from[0]) / 3;
    const after = (leaving[1] - from[1]) / third;
    const before = (to[1] - arriving[1]) / third;
    const last = knots.pop() ?? { x: from[0], y: from[1], before: after };
    if (last.x !== from[0] || last.y !== from[1]) return undefined;
    knots.push({ ...last, after }, { x: to[0], y: to[1], before, after: before });
  }
  return knots;
}

/** The band between two curves that do not cross, whichever lies above. */
function between(one: HermiteCurve | undefined, other: HermiteCurve | undefined): Band | undefined {
  if (one === undefined || other === undefined) return undefined;
  const gap = hermiteDifference(one, other);
  if (hermiteZeros(gap).length > 0) return undefined;
  const middle = ((gap[0]?.x ?? 0) + (gap[1]?.x ?? 0)) / 2;
  return hermiteAt(gap, middle) > 0 ? { top: one, bottom: other } : { top: other, bottom: one };
}

/** How unevenly control points may stand for a straight piece that was rounded. */
const ROUNDING = 1e-9;
