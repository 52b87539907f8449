/**
 * Where a continuous function of one number is zero between two places at which its signs differ;
 * undefined where they do not differ.
 *
 * Regula falsi in the Illinois form (from memory): the chord's zero replaces the end of its own
 * sign, and an end that is kept twice counts half, so that both ends close in.
 */
export function rootBetween(
  low: number,
  high: number,
  of: (at: number) => number,
): number | undefined {
  let [near, atNear] = [low, of(low)];
  let [far, atFar] = [high, of(high)];
  if (atNear === 0) return near;
  if (atFar === 0) return far;
  if (atNear > 0 === atFar > 0) return undefined;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = (near * atFar - far * atNear) / (atFar - atNear);
    const atNext = of(next);
    if (atNext === 0 || Math.abs(next - far) <= CLOSE_ENOUGH * Math.abs(next)) return next;
    if (atNext > 0 === atFar > 0) atNear /= 2;
    else [near, atNear] = [far, atFar];
    [far, atFar] = [next, atNext];
  }
  return far;
}

const MOST_ROUNDS = 100;

/** A step of a few roundings of a double goes nowhere. */
const CLOSE_ENOUGH = 32 * Number.EPSILON;
