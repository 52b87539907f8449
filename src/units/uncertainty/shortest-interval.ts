/**
 * The shortest interval that holds a share of the draws, which come in ascending order; of equally
 * short ones the lowest.
 *
 * Source: JCGM 101:2008 (GUM Supplement 1).
 */
export function shortestInterval(
  ascending: ArrayLike<number>,
  share: number,
): readonly [low: number, high: number] {
  const at = (index: number): number => ascending[index] as number;
  const last = ascending.length - 1;
  const span = Math.min(last, Math.max(1, Math.round(share * ascending.length)));
  let low = 0;
  for (let start = 1; start + span <= last; start += 1) {
    if (at(start + span) - at(start) < at(low + span) - at(low)) low = start;
  }
  return [at(low), at(low + span)];
}
