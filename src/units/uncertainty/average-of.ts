import { type Measured, measured } from "./measured.js";
import { refuse, refusingAs } from "../quantities/geometry-error.js";

/**
 * The mean of repeated, independent measurements of one thing, each weighted by 1/u²; n equally
 * good ones give their plain mean with u/√n.
 *
 * Values without uncertainty outweigh all others. Only scatter averages out: an error that all
 * readings share, such as that of one photo's scale, does not, and has to be added afterwards.
 *
 * @throws GeometryError `wrong-count` where there is nothing to average, `not-finite`,
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { averageOf, measured, mm } from "brow-geometry";
 * const placements = [21.4, 21.9, 21.5].map((height) => measured(mm(height), mm(0.26)));
 * averageOf(placements); // → { value: 21.6, u: 0.15 }
 * ```
 */
export function averageOf<Value extends number>(
  measurements: readonly Measured<Value>[],
): Measured<Value> {
  const checked = refusingAs("averageOf", () =>
    measurements.map(({ value, u }) => measured(value, u)),
  );
  if (checked.length === 0) {
    refuse("wrong-count", "averageOf", "measurements", measurements, "at least one measurement");
  }
  const least = Math.min(...checked.map(({ u }) => u));
  // Relative to the best of them, so that no square under- or overflows.
  const weights = checked.map(({ u }) => (u === least ? 1 : (least / u) ** 2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const sum = checked.reduce((sofar, { value }, at) => sofar + value * (weights[at] as number), 0);
  return measured<number>(sum / total, least / Math.sqrt(total)) as Measured<Value>;
}
