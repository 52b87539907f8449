import type { Point, Polyline, Unit } from "../../units/index.js";

/**
 * Area that two polygons share, in square units; each is closed from its last point to its first, and
 * may be run through either way. Where a polygon crosses itself, what it covers twice is outside.
 *
 * Exact but for rounding: between neighbouring corners and crossings no edges cross, so what both
 * cover of a vertical changes evenly, and its middle value times the width is the strip's area.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { sharedArea } from "brow-geometry/geometry";
 * const one = mm([[0, 0], [2, 0], [2, 2], [0, 2]]);
 * const other = mm([[1, 1], [3, 1], [3, 3], [1, 3]]);
 * sharedArea(one, other); // → 1
 * ```
 */
export function sharedArea<U extends Unit>(one: Polyline<U>, other: Polyline<U>): number {
  const [ofOne, ofOther] = [edgesOf(one), edgesOf(other)];
  const places = new Set([...one, ...other].map(([x]) => x));
  const all = [...ofOne, ...ofOther];
  all.forEach((edge, index) => {
    for (const crossed of all.slice(index + 1)) {
      const x = crossingOf(edge, crossed);
      if (x !== undefined) places.add(x);
    }
  });
  const sorted = [...places].sort((left, right) => left - right);
  let sum = 0;
  sorted.forEach((to, index) => {
    const from = sorted[index - 1];
    if (from === undefined) return;
    const middle = (from + to) / 2;
    sum += (to - from) * sharedHeight(heightsAt(ofOne, middle), heightsAt(ofOther, middle));
  });
  return sum;
}

/** An edge that is not vertical, from smaller to larger x. */
export interface Edge {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly slope: number;
}

export function edgesOf<U extends Unit>(polygon: Polyline<U>): readonly Edge[] {
  return polygon.flatMap((point, index) => {
    const next = polygon[(index + 1) % polygon.length] as Point<U>;
    const [left, right] = point[0] < next[0] ? [point, next] : [next, point];
    if (left[0] === right[0]) return [];
    const slope = (right[1] - left[1]) / (right[0] - left[0]);
    return [{ from: left[0], to: right[0], y: left[1], slope }];
  });
}

/** The x at which two edges cross between their ends. */
function crossingOf(one: Edge, other: Edge): number | undefined {
  const from = Math.max(one.from, other.from);
  const to = Math.min(one.to, other.to);
  if (from >= to || one.slope === other.slope) return undefined;
  const apart = heightOf(one, from) - heightOf(other, from);
  const x = from + apart / (other.slope - one.slope);
  return x > from && x < to ? x : undefined;
}

function heightOf(edge: Edge, x: number): number {
  return edge.y + edge.slope * (x - edge.from);
}

/** Where the vertical at an x enters and leaves a polygon, from below. */
export function heightsAt(edges: readonly Edge[], x: number): readonly number[] {
  return edges
    .filter(({ from, to }) => from <= x && x < to)
    .map((edge) => heightOf(edge, x))
    .sort((one, other) => one - other);
}

/** How much of a vertical two lists of entries and exits have in common. */
function sharedHeight(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let first = 0; first + 1 < one.length; first += 2) {
    for (let second = 0; second + 1 < other.length; second += 2) {
      const low = Math.max(one[first] as number, other[second] as number);
      const high = Math.min(one[first + 1] as number, other[second + 1] as number);
      if (high > low) sum += high - low;
    }
  }
  return sum;
}
