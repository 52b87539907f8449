import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { refuse } from "../quantities/geometry-error.js";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Draws independent deviations of mean 0 and standard deviation 1. */
export interface Deviations {
  readonly normal: () => number;
  readonly rectangular: () => number;
}

/** Deviations that the same seed repeats, on every machine. */
export function deviationsFrom(seed: number): Deviations {
  if (!Number.isInteger(seed) || Math.abs(seed) > LARGEST_SEED) {
    refuse("out-of-range", "seed", seed, "a whole number of at most 2³¹ − 1");
  }
  const generator = xoroshiro128plus(seed);
  const uniform = (): number => uniformFloat64(generator);
  return {
    // Box and Muller's transform (from memory); 1 − u is never 0.
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    rectangular: () => Math.sqrt(12) * (uniform() - 0.5),
  };
}

const LARGEST_SEED = 2 ** 31 - 1;
