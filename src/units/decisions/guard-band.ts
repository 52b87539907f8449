import {
  normalDensity,
  normalDistribution,
  normalQuantile,
} from "../uncertainty/normal-distribution.js";
import { riseToRoot } from "../uncertainty/rise-to-root.js";

/**
 * How far inside its limits a reading has to lie for the true value to keep both of them with the
 * confidence: the `g` at which Φ(g/u) + Φ((width − g)/u) − 1 reaches it, solved exactly.
 *
 * For one limit the width is infinite and `g` is the familiar 1.645 u. Under a width of
 * 2 Φ⁻¹((1 + confidence)/2) u, which is 3.92 u for 95 %, not even a reading in the middle can be
 * accepted: undefined.
 *
 * Source: JCGM 106:2012.
 */
export function guardBandOf(width: number, u: number, confidence: number): number | undefined {
  if (u === 0) return 0;
  const ratio = width / u;
  if (2 * normalDistribution(ratio / 2) - 1 < confidence) return undefined;
  const band = riseToRoot(normalQuantile(confidence), (at) => {
    const reached = normalDistribution(at) + normalDistribution(ratio - at) - 1;
    const slope = normalDensity(at) - normalDensity(ratio - at);
    return slope > 0 ? (confidence - reached) / slope : 0;
  });
  return u * Math.min(band, ratio / 2);
}
