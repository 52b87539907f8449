import { type Measured, measured } from "./measured.js";
import { refuse, refusingAs } from "../quantities/geometry-error.js";

/**
 * The mean of repeated, independent measurements of one thing, each weighted by 1/u²; n equally
 * good ones give their plain mean with u/√n. Where they scatter by more than their uncertainties
 * say, u grows by as much: by the Birge ratio, the root of the weighted squares from the mean over
 * n − 1.
 *
 * Values without uncertainty outweigh all others. Only scatter averages out: an error that all
 * readings share, such as that of one photo's scale, does not, and has to be added afterwards.
 *
 * Source: Birge, Phys Rev 1932;40:207–227 (from memory).
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
  return refusingAs("averageOf", () => {
    const checked = measurements.map(({ value, u }) => measured(value, u));
    if (checked.length === 0) {
      refuse("wrong-count", "measurements", measurements, "at least one measurement");
    }
    const least = Math.min(...checked.map(({ u }) => u));
    // Relative to the best of them, so that no square under- or overflows.
    const weights = checked.map(({ u }) => (u === least ? 1 : (least / u) ** 2));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const sum = checked.reduce(
      (sofar, { value }, at) => sofar + value * (weights[at] as number),
      0,
    );
    const mean = sum / total;
    const squares = checked.reduce(
      (sofar, { value }, at) => sofar + (weights[at] as number) * (value - mean) ** 2,
      0,
    );
    // One that others outweigh altogether says nothing of how they scatter.
    const counted = weights.filter((weight) => weight > 0).length;
    const scatter = counted > 1 ? Math.sqrt(squares / (counted - 1)) : 0;
    return measured<number>(mean, Math.max(least, scatter) / Math.sqrt(total)) as Measured<Value>;
  });
}
