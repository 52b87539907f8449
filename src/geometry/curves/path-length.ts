import { type Length, length, type Unit } from "../../units/index.js";
import { type Cubic, pointOnCubic } from "./cubic.js";
import { integrate } from "./integrate.js";
import type { Surface } from "./surface.js";

/** Length of a path of cubics, to 1e-12 of it; where a surface is given, of the curve over it there. */
export function pathLength<U extends Unit>(
  path: readonly Cubic<U>[],
  surface?: Surface,
): Length<U> {
  return length(path.reduce((sum, cubic) => sum + cubicLength(cubic, surface), 0));
}

function cubicLength<U extends Unit>(cubic: Cubic<U>, surface: Surface | undefined): number {
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = cubic;
  const speed = (at: number): number => {
    const rest = 1 - at;
    const [first, second, third] = [rest * rest, 2 * rest * at, at * at];
    const x = 3 * (first * (x1 - x0) + second * (x2 - x1) + third * (x3 - x2));
    const y = 3 * (first * (y1 - y0) + second * (y2 - y1) + third * (y3 - y2));
    if (surface === undefined) return Math.sqrt(x * x + y * y);
    const [placeX, placeY] = pointOnCubic(cubic, at);
    const depth = surface.rise(placeX, placeY, x, y);
    return Math.sqrt(x * x + y * y + depth * depth);
  };
  const stops = [...turnsOf(cubic), 1];
  return stops.reduce((sum, to, index) => sum + integrate(stops[index - 1] ?? 0, to, speed), 0);
}

/**
 * Where a curve may stand still, in order: where it turns back in the direction in which it reaches
 * farther. Its speed has a corner there, over which two rules can agree by chance.
 */
function turnsOf<U extends Unit>([from, leaving, arriving, to]: Cubic<U>): readonly number[] {
  const steps = (axis: 0 | 1): readonly [number, number, number] => [
    leaving[axis] - from[axis],
    arriving[axis] - leaving[axis],
    to[axis] - arriving[axis],
  ];
  const [along, across] = [steps(0), steps(1)];
  const [first, second, third] = reachOf(along) < reachOf(across) ? across : along;
  // Zeros of first (1 − t)² + 2 second t (1 − t) + third t², with no difference of numbers that are near.
  const root = Math.sqrt(second * second - first * third);
  const sum = second < 0 ? root - second : -root - second;
  return [sum / (sum + third), first / (first + sum)]
    .filter((at) => at > 0 && at < 1)
    .sort((one, other) => one - other);
}

function reachOf(steps: readonly number[]): number {
  return steps.reduce((sum, step) => sum + Math.abs(step), 0);
}
