/** A pencil draws half millimetres; a finer figure would promise too much. */
export function inHalves(amount: number): number {
  // Adding 0 turns −0 into 0.
  return Math.round(2 * amount) / 2 + 0;
}
