import { type Cubic } from "../geometry/index.js";
import { straightCubic } from "../geometry/internal.js";
import type { Brow } from "../landmarks/index.js";
import { type Point, type Polyline, type Unit } from "../units/index.js";
import { refusingAs, refuse, requirePolyline } from "../units/internal.js";
import type { Outline } from "./outline.js";

/**
 * The outline of a brow as it grows: its borders from point to point, joined straight at both ends.
 *
 * @throws GeometryError `wrong-count` where a border has fewer than 2 points, `not-finite`,
 * `coincident-points` where no two of its points differ
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { naturalOutline } from "brow-geometry/proportions";
 * const brow = { upper: mm([[15, 20], [40, 26], [58, 18]]), lower: mm([[15, 12], [40, 20], [57, 17]]) };
 * naturalOutline(brow).tail.length; // → 1
 * ```
 */
export function naturalOutline<U extends Unit>(brow: Required<Brow<U>>): Outline<U> {
  return refusingAs("naturalOutline", () => {
    const upper = straightPath("brow.upper", brow.upper);
    const lower = straightPath("brow.lower", brow.lower);
    const [upperStart, upperEnd] = endsOf(upper);
    const [lowerStart, lowerEnd] = endsOf(lower);
    return {
      upper,
      tail: joined(upperEnd, lowerEnd),
      lower,
      front: joined(lowerStart, upperStart),
    };
  });
}

function straightPath<U extends Unit>(field: string, border: Polyline<U>): readonly Cubic<U>[] {
  requirePolyline(field, border, 2);
  const path = border.slice(1).flatMap((to, index) => joined(border[index] as Point<U>, to));
  if (path.length === 0) {
    refuse("coincident-points", field, border, "two points that differ");
  }
  return path;
}

/** Nothing where both are one place. */
function joined<U extends Unit>(from: Point<U>, to: Point<U>): readonly Cubic<U>[] {
  return from[0] === to[0] && from[1] === to[1] ? [] : [straightCubic(from, to)];
}

function endsOf<U extends Unit>(path: readonly Cubic<U>[]): readonly [Point<U>, Point<U>] {
  const [first, last] = [path[0] as Cubic<U>, path[path.length - 1] as Cubic<U>];
  return [first[0], last[3]];
}
