import { flatPoint, type FlatPoint, type Point, type Polyline } from "../units/index.js";

/** The ends and corners of a border seen from the chord between its ends. */
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
  for (let index = 0; index < border.length; index += 1) {
    const point = border[index] as Point<"mm">;
    const next = border[index + 1];
    if (index > 0 && next !== undefined && isBetween(point, before, next)) continue;
    const [right, above] = [point[0] - before[0], point[1] - before[1]];
    way += Math.sqrt(right * right + above * above);
    before = point;
    const [x, y] = [point[0] - start[0], point[1] - start[1]];
    along.push(way);
    shares.push((x * chord[0] + y * chord[1]) / (size * size));
    heights.push(x * up[0] + y * up[1]);
  }
  return { along, shares, heights, start, chord, up };
}

/** What lies off a straight line by less does so by rounding, in mm. */
const STRAIGHT = 1e-9;

/** Whether a point is no corner but lies on the way from one to the other. */
function isBetween(point: Point<"mm">, from: Point<"mm">, to: Point<"mm">): boolean {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const [offX, offY] = [point[0] - from[0], point[1] - from[1]];
  const square = x * x + y * y;
  const share = square === 0 ? 0 : Math.min(Math.max((offX * x + offY * y) / square, 0), 1);
  const [asideX, asideY] = [offX - share * x, offY - share * y];
  return asideX * asideX + asideY * asideY <= STRAIGHT * STRAIGHT;
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
