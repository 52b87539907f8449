import type { HermiteCurve } from "./hermite.js";

/**
 * The shape-preserving curve through points: cubic pieces with one slope at every point, rising where
 * the points rise, falling where they fall, level at their highs and lows, so that it never runs
 * past them.
 *
 * Source: Fritsch & Carlson 1980; slopes as weighted harmonic means, and at the ends by three points,
 * as in SciPy's `PchipInterpolator`.
 *
 * @param points two or more, x growing: those who ask have refused others
 */
export function pchip(points: readonly (readonly [x: number, y: number])[]): HermiteCurve {
  const stretches: Stretch[] = [];
  for (let index = 1; index < points.length; index += 1) {
    const from = points[index - 1] as readonly [number, number];
    const to = points[index] as readonly [number, number];
    const width = to[0] - from[0];
    stretches.push({ width, slope: (to[1] - from[1]) / width });
  }
  return points.map((point, index) => {
    const slope = slopeBetween(stretches, index);
    return { x: point[0], y: point[1], before: slope, after: slope };
  });
}

/** A straight stretch between neighbouring points. */
export interface Stretch {
  readonly width: number;
  readonly slope: number;
}

/** Slope at a point between two stretches: their weighted harmonic mean, level at a high or low. */
export function softSlope(before: Stretch, after: Stretch): number {
  if (before.slope * after.slope <= 0) return 0;
  const weightBefore = before.width + 2 * after.width;
  const weightAfter = 2 * before.width + after.width;
  return (weightBefore + weightAfter) / (weightBefore / before.slope + weightAfter / after.slope);
}

function slopeBetween(stretches: readonly Stretch[], index: number): number {
  const before = stretches[index - 1];
  const after = stretches[index];
  if (before !== undefined && after !== undefined) return softSlope(before, after);
  return before === undefined
    ? endSlope(after as Stretch, stretches[index + 1])
    : endSlope(before, stretches[index - 2]);
}

/** Slope at an end, from a parabola through three points, kept within what leaves no overshoot. */
function endSlope(near: Stretch, far: Stretch | undefined): number {
  if (far === undefined) return near.slope;
  const slope =
    ((2 * near.width + far.width) * near.slope - near.width * far.slope) / (near.width + far.width);
  if (slope * near.slope <= 0) return 0;
  const turns = near.slope * far.slope <= 0;
  return turns && Math.abs(slope) > 3 * Math.abs(near.slope) ? 3 * near.slope : slope;
}
