import { refusingAs } from "./geometry-error.js";
import { requireFinite, requirePositive } from "./require.js";
import type { Length } from "./quantity.js";

/**
 * A length in millimetres as a ruler shows it: to the nearest step, half a millimetre where nothing
 * else is said, with as many decimals as the step has.
 *
 * Half a step rounds away from zero; what rounds to zero has no sign.
 *
 * @throws GeometryError `not-finite`, `out-of-range` for a step that is not more than 0
 *
 * @example
 * ```ts
 * import { formatLength, mm } from "brow-geometry";
 * formatLength(mm(29.62)); // → "29.5 mm"
 * formatLength(mm(29.62), { step: mm(0.1) }); // → "29.6 mm"
 * formatLength(mm(-0.2)); // → "0.0 mm"
 * ```
 */
export function formatLength(
  length: Length<"mm">,
  options: { readonly step?: Length<"mm"> } = {},
): string {
  return refusingAs("formatLength", () => {
    const step: number = options.step ?? USUAL_STEP;
    requireFinite("length", length);
    requirePositive("step", step);
    const steps = Math.round(Math.abs(length) / step);
    const sign = length < 0 && steps > 0 ? "-" : "";
    return `${sign}${(steps * step).toFixed(decimalsOf(step))} mm`;
  });
}

const USUAL_STEP = 0.5;

/** toFixed takes no more. */
const MOST_DECIMALS = 100;

/** The fewest decimals with which a step is written out. */
function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals += 1) {
    if (Number(step.toFixed(decimals)) === step) return decimals;
  }
  return MOST_DECIMALS;
}
