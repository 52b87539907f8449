import { requireFinite } from "../quantities/require.js";
import { refuse } from "../quantities/geometry-error.js";
import { riseToRoot } from "./rise-to-root.js";

/**
 * Probability Φ(z) that a standard normal variable is at most `z`, to full relative precision in
 * the lower tail: by the series of its middle and the continued fraction of its tails (both from memory).
 */
export function normalDistribution(z: number): number {
  if (Number.isNaN(z)) requireFinite("z", z);
  if (z < -TAIL) return upperTail(-z);
  if (z > TAIL) return 1 - upperTail(z);
  return 0.5 + centralArea(z);
}

/** The `z` below which a standard normal variable lies with `probability`: inverse of Φ. */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) {
    const need = "more than 0 and less than 1";
    refuse("out-of-range", "probability", probability, need);
  }
  return quantileOf(probability);
}

/** As {@link normalQuantile}, of a probability that is known to be one. */
export function quantileOf(probability: number): number {
  return probability > 0.5 ? -lowerQuantile(1 - probability) : lowerQuantile(probability);
}

/** log Φ is concave, and Φ(−t) ≤ exp(−t²/2)/2 puts the start left of the root. */
function lowerQuantile(probability: number): number {
  const wanted = Math.log(probability);
  return riseToRoot(-Math.sqrt(-2 * Math.log(2 * probability)), (z) => {
    const slope = z < -TAIL ? tailFraction(-z) : normalDensity(z) / normalDistribution(z);
    const reached = z < -TAIL ? logDensity(z) - Math.log(slope) : Math.log(normalDistribution(z));
    return (wanted - reached) / slope;
  });
}

function logDensity(z: number): number {
  return -0.5 * z * z - 0.5 * Math.log(2 * Math.PI);
}

export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}

/** Beyond this many standard deviations the continued fraction takes over from the series. */
const TAIL = 2.5;

/** Φ(z) − 1/2 as the density times z + z³/3 + z⁵/15 + …, all of one sign. */
function centralArea(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > Number.EPSILON * 0.01 * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return normalDensity(z) * sum;
}

function upperTail(z: number): number {
  return normalDensity(z) / tailFraction(z);
}

/** The density over 1 − Φ(z): z + 1/(z + 2/(z + 3/(z + …))), from the inside out. */
function tailFraction(z: number): number {
  let fraction = z;
  for (let level = FRACTION_LEVELS; level >= 1; level -= 1) fraction = z + level / fraction;
  return fraction;
}

/** Enough for the fraction to settle to the last bit at the end of the tail nearest the middle. */
const FRACTION_LEVELS = 120;

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
