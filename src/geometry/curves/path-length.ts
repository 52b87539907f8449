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
  const [from, leaving, arriving, to] = cubic;
  const speedAlong = (axis: 0 | 1, at: number): number => {
    const rest = 1 - at;
    return (
      3 *
      (rest * rest * (leaving[axis] - from[axis]) +
        2 * rest * at * (arriving[axis] - leaving[axis]) +
        at * at * (to[axis] - arriving[axis]))
    );
  };
  return integrate(0, 1, (at) => {
    const [x, y] = [speedAlong(0, at), speedAlong(1, at)];
    if (surface === undefined) return Math.hypot(x, y);
    const [placeX, placeY] = pointOnCubic(cubic, at);
    return Math.hypot(x, y, surface.rise(placeX, placeY, x, y));
  });
}
