import type { Side, Sides } from "../../units/index.js";
import { type Lead, LEADS } from "./choice-tables.js";

/** The value that both sides take when one of them leads, or when they meet half-way. */
export function ledBy(lead: Lead, values: Sides<number>): number {
  const sides = ledSides(lead);
  return sides.reduce((sum, side) => sum + values[side], 0) / sides.length;
}

/** The sides whose own dots count: the one that leads, or both. */
export function ledSides(lead: Lead): readonly Side[] {
  return LEADS[lead];
}
