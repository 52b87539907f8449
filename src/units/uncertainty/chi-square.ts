import { normalQuantile } from "./normal-distribution.js";

/**
 * The sum of squares of `freedom` independent standard normal variables that is exceeded with
 * probability 1 − `probability`; good to 3 % from the upper quartile up.
 *
 * Source: Wilson and Hilferty's cube-root approximation (from memory).
 */
export function chiSquareQuantile(probability: number, freedom: number): number {
  const spread = 2 / (9 * freedom);
  return freedom * (1 - spread + normalQuantile(probability) * Math.sqrt(spread)) ** 3;
}
