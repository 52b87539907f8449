import type { KindOfMeasure } from "./measures.js";

/** How much of something of one kind, without its sign, as a sentence says it. */
export function amountOf({ unit, decimals }: KindOfMeasure, value: number): string {
  const size = Math.abs(value).toFixed(decimals);
  return unit === "" ? size : `${Number(size)} ${unit}`;
}
