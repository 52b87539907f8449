import { type FlatPoint, type Length, type Unit } from "../../units/index.js";
import { requirePositive } from "../../units/internal.js";
import { type Cubic, pointOnCubic } from "./cubic.js";

/**
 * A path of cubics as a polyline that strays from it by no more than the stated error.
 *
 * A chord over 1/n of a cubic strays by at most max|second derivative| / 8n², and that maximum lies
 * at one of its ends.
 */
export function flatten<U extends Unit>(
  path: readonly Cubic<U>[],
  error: Length<U>,
): readonly FlatPoint<U>[] {
  requirePositive("error", error);
  const [first] = path;
  if (first === undefined) return [];
  return [
    first[0],
    ...path.flatMap((cubic) => {
      const count = Math.max(1, Math.ceil(Math.sqrt((6 * bend(cubic)) / (8 * error))));
      return Array.from({ length: count }, (_, index) =>
        index === count - 1 ? cubic[3] : pointOnCubic(cubic, (index + 1) / count),
      );
    }),
  ];
}

/** A sixth of the greatest second derivative. */
function bend<U extends Unit>([from, leaving, arriving, to]: Cubic<U>): number {
  const second = (one: FlatPoint<U>, middle: FlatPoint<U>, other: FlatPoint<U>): number =>
    Math.hypot(one[0] - 2 * middle[0] + other[0], one[1] - 2 * middle[1] + other[1]);
  return Math.max(second(from, leaving, arriving), second(leaving, arriving, to));
}
