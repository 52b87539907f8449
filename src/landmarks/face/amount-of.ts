import type { KindOfMeasure } from "./measures.js";

/**
 * How much of something of one kind, without its sign, as a sentence says it.
 *
 * @example
 * ```ts
 * import { amountOf, MEASURE_KINDS } from "brow-geometry/landmarks";
 * amountOf(MEASURE_KINDS.height, -2.52); // → "2.5 mm"
 * amountOf(MEASURE_KINDS.share, 0.04); // → "0.04"
 * ```
 */
export function amountOf({ unit, decimals }: KindOfMeasure, value: number): string {
  const size = Math.abs(value).toFixed(decimals);
  return unit === "" ? size : `${Number(size)} ${unit}`;
}
