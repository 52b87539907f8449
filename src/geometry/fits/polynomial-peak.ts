import { type PolynomialFit, polynomialAt } from "./polynomial-fit.js";
import { rootBetween } from "../curves/root-between.js";

/**
 * Where a fitted polynomial has its highest peak between two ends: a place with slope 0 and a
 * falling slope. None where the curve only rises, only falls, or sags.
 */
export function highestPeak(fit: PolynomialFit, from: number, to: number): number | undefined {
  const steps = STEPS_A_TURN * Math.max(1, fit.powers.length - 1);
  let peak: number | undefined;
  let height = Number.NEGATIVE_INFINITY;
  const slope = (at: number): number => polynomialAt(fit, at, 1);
  let left = from;
  let slopeLeft = slope(left);
  for (let step = 1; step <= steps; step += 1) {
    const right = from + ((to - from) * step) / steps;
    const slopeRight = slope(right);
    if (slopeLeft > 0 && slopeRight <= 0) {
      const place = rootBetween(left, right, slope) as number;
      const value = polynomialAt(fit, place);
      if (value > height) [peak, height] = [place, value];
    }
    [left, slopeLeft] = [right, slopeRight];
  }
  return peak;
}

/** The slope is looked at this often for every turn that the degree allows. */
const STEPS_A_TURN = 6;
