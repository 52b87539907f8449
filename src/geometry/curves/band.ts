import type { Unit } from "../../units/index.js";
import type { Cubic } from "./cubic.js";
import { graphOf } from "./graph-of.js";
import { hermiteAt, type HermiteCurve, hermiteDifference } from "./hermite.js";
import { hermiteZeros } from "./hermite-zeros.js";

/** What lies between two curves over the same stretch of x. */
export interface Band {
  readonly top: HermiteCurve;
  readonly bottom: HermiteCurve;
}

/**
 * A closed path as what lies between two curves y(x), where it is that: where every vertical enters it
 * once and leaves it once, and its pieces go evenly through x. Vertical pieces may close it at either
 * end.
 */
export function bandOf<U extends Unit>(path: readonly Cubic<U>[]): Band | undefined {
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
