/**
 * Where Tukey's bisquare cuts off, in standard deviations of good values: what lies farther counts for
 * nothing. With this cut a fit is 95 % as efficient as least squares where all errors are normal; a test
 * computes it from that.
 */
export const BISQUARE_CUT = 4.685;

/** What a bisquare leaves of a weight: all of it at 0, nothing from the cut on, whose square is 1. */
export function bisquare(square: number): number {
  return square < 1 ? (1 - square) * (1 - square) : 0;
}
