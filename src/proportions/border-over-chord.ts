import { flatPoint, type FlatPoint, type Point, type Polyline } from "../units/index.js";

/** A border seen from the chord between its ends; points drawn twice in a row count once. */
export interface BorderOverChord {
  /** Way of each point along the border, in mm. */
  readonly along: readonly number[];
  /** Foot of each point on the chord: 0 at the first point, 1 at the last. */
  readonly shares: readonly number[];
  /** Distance of each point from the chord, in mm, positive above it. */
  readonly heights: readonly number[];
  readonly start: Point<"mm">;
  /** From the first point to the last. */
  readonly chord: readonly [x: number, y: number];
  /** Of length 1, square to the chord, upwards. */
  readonly up: readonly [x: number, y: number];
}

/** Points nearer than this are one, in mm: between them nothing but rounding would turn. */
const SAME_PLACE = 1e-4;

/** Lays a border out over its chord; its ends must differ. */
export function overChord(border: Polyline<"mm">): BorderOverChord {
  const start = border[0] as Point<"mm">;
  const end = border[border.length - 1] as Point<"mm">;
  const chord = [end[0] - start[0], end[1] - start[1]] as const;
  const size = Math.hypot(chord[0], chord[1]);
  // Upwards on either side of the face, so that a mirrored border gives the same numbers.
  const turn = chord[0] < 0 ? -1 : 1;
  const up = [(-turn * chord[1]) / size, (turn * chord[0]) / size] as const;
  const along: number[] = [];
  const shares: number[] = [];
  const heights: number[] = [];
  let way = 0;
  let before = start;
  for (const point of border) {
    const [right, above] = [point[0] - before[0], point[1] - before[1]];
    const step = Math.sqrt(right * right + above * above);
    if (step < SAME_PLACE && along.length > 0) continue;
    way += step;
    before = point;
    const [x, y] = [point[0] - start[0], point[1] - start[1]];
    along.push(way);
    shares.push((x * chord[0] + y * chord[1]) / (size * size));
    heights.push(x * up[0] + y * up[1]);
  }
  return { along, shares, heights, start, chord, up };
}

/** The point over a share of the chord, at a height above it. */
export function placeOverChord(
  { start, chord, up }: BorderOverChord,
  share: number,
  height: number,
): FlatPoint<"mm"> {
  return flatPoint(
    start[0] + share * chord[0] + height * up[0],
    start[1] + share * chord[1] + height * up[1],
  );
}
