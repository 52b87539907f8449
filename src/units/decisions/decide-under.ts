import type { Measured } from "../uncertainty/measured.js";
import { decide, type Decision, type DecisionOptions, type Limits } from "./decide.js";
import type { ToleranceName, ToleranceSet } from "./tolerances.js";

/**
 * The decision of a tolerance set on a value, in an object to be spread: none where the set says nothing
 * of it. The limits are those of a difference from `aim`, 0 where the value is a difference itself.
 *
 * @throws GeometryError as {@link decide}
 */
export function decideUnder(
  { tolerances }: ToleranceSet,
  name: ToleranceName | undefined,
  value: Measured,
  options: DecisionOptions = {},
  aim = 0,
): { readonly decision?: Decision } {
  const tolerance = name === undefined ? undefined : tolerances[name];
  if (tolerance === undefined) return {};
  return { decision: decide(value, about(aim, tolerance.limits), options) };
}

function about(aim: number, limits: Limits): Limits {
  const { lower, upper } = limits;
  if (aim === 0) return limits;
  return {
    ...(lower === undefined ? {} : { lower: aim + lower }),
    ...(upper === undefined ? {} : { upper: aim + upper }),
  };
}
