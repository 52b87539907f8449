/**
 * Newton's method on a concave, increasing function, from a start at or left of its root: every
 * step lands left of the root again, so the steps climb to it and end where rounding stops them.
 */
export function riseToRoot(start: number, step: (at: number) => number): number {
  let at = start;
  for (let round = 0; round < MOST_STEPS; round += 1) {
    const next = at + step(at);
    if (!(next > at)) break;
    at = next;
  }
  return at;
}

/** A double root is approached by halves, about 50 times; a simple one in fewer than ten steps. */
const MOST_STEPS = 200;
