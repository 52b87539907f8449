import type { Side, Sides } from "../../units/index.js";
import type { Lead } from "./choices.js";

/** The value that both sides take when one of them leads, or when they meet half-way. */
export function ledBy(lead: Lead, values: Sides<number>): number {
  return lead === "middle" ? (values.right + values.left) / 2 : values[lead];
}

/** The sides whose own dots count: the one that leads, or both. */
export function ledSides(lead: Lead): readonly Side[] {
  return lead === "middle" ? ["right", "left"] : [lead];
}
