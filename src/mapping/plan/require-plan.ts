import { refuse } from "../../units/internal.js";
import type { BrowPlan } from "./plan.js";

/** Refuses what is no plan, as programs in JavaScript can pass it. */
export function requirePlan(plan: BrowPlan): void {
  const known = plan as Partial<BrowPlan> | null | undefined;
  if (known?.face !== undefined && known.dots !== undefined && known.moves !== undefined) return;
  refuse("not-parsed", "plan", plan, "a plan of planBrows or planOnPhoto");
}
