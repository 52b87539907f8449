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
  return integrate(0, 1, (at) => {
    const rest = 1 - at;
    const [first, second, third] = [rest * rest, 2 * rest * at, at * at];
    const x = 3 * (first * (x1 - x0) + second * (x2 - x1) + third * (x3 - x2));
    const y = 3 * (first * (y1 - y0) + second * (y2 - y1) + third * (y3 - y2));
    if (surface === undefined) return Math.sqrt(x * x + y * y);
    const [placeX, placeY] = pointOnCubic(cubic, at);
    const depth = surface.rise(placeX, placeY, x, y);
    return Math.sqrt(x * x + y * y + depth * depth);
  });
}
