import type { Length, Point, Polyline, Unit } from "../../units/index.js";
import { edgesOf, heightsAt } from "./shared-area.js";

/**
 * Area of what lies in a polygon or no farther than a margin from it, in square units, and how much of that
 * another polygon shares.
 *
 * Read on verticals, between all places where something begins or ends: right to about 1e-4 of the area.
 */
export function areaAround<U extends Unit>(
  polygon: Polyline<U>,
  margin: Length<U>,
  within?: Polyline<U>,
): number {
  const [edges, otherEdges] = [edgesOf(polygon), within && edgesOf(within)];
  const bands =
    margin > 0 ? polygon.map((point, index) => bandOf(point, nextOf(polygon, index), margin)) : [];
  const covered = (x: number): readonly Stretch[] =>
    joined([...stretchesOf(heightsAt(edges, x)), ...bands.flatMap((band) => band.at(x) ?? [])]);
  const heightAt = (x: number): number => {
    const own = covered(x);
    return otherEdges === undefined
      ? own.reduce((sum, [low, high]) => sum + high - low, 0)
      : sharedHeight(own, stretchesOf(heightsAt(otherEdges, x)));
  };
  const stops = [
    ...polygon.map(([x]) => x),
    ...bands.flatMap(({ stops: places }) => places),
    ...(within ?? []).map(([x]) => x),
  ].sort((one, other) => one - other);
  return stops
    .slice(1)
    .reduce((sum, to, index) => sum + overStretch(heightAt, stops[index] as number, to), 0);
}

/** Whether a point lies in a polygon. */
export function isWithinPolygon<U extends Unit>(point: Point<U>, polygon: Polyline<U>): boolean {
  return (
    heightsAt(edgesOf(polygon), point[0]).filter((height) => height > point[1]).length % 2 === 1
  );
}

function nextOf<U extends Unit>(polygon: Polyline<U>, index: number): Point<U> {
  return polygon[(index + 1) % polygon.length] as Point<U>;
}

type Stretch = readonly [low: number, high: number];

/** What lies about one edge: where a vertical runs in it, and where that changes its rule. */
interface Band {
  readonly at: (x: number) => readonly Stretch[] | undefined;
  readonly stops: readonly number[];
}

/** What lies no farther than a margin from an edge: a strip with a disc at either end. */
function bandOf<U extends Unit>([x, y]: Point<U>, [toX, toY]: Point<U>, margin: number): Band {
  const size = Math.hypot(toX - x, toY - y);
  const [alongX, alongY] = size === 0 ? [1, 0] : [(toX - x) / size, (toY - y) / size];
  const disc = (centreX: number, centreY: number, at: number): readonly Stretch[] => {
    const half = Math.sqrt(margin ** 2 - (at - centreX) ** 2);
    return half > 0 ? [[centreY - half, centreY + half]] : [];
  };
  const strip = (at: number): readonly Stretch[] => {
    const across = at - x;
    // Beside the edge by no more than the margin, and along it between its ends.
    const beside = between(-margin + across * alongY, margin + across * alongY, alongX);
    const along = between(-across * alongX, size - across * alongX, alongY);
    const [low, high] = [Math.max(beside[0], along[0]), Math.min(beside[1], along[1])];
    return high > low ? [[y + low, y + high]] : [];
  };
  const at = (where: number): readonly Stretch[] =>
    joined([...disc(x, y, where), ...disc(toX, toY, where), ...strip(where)]);
  const aside = margin * alongY;
  return {
    at,
    stops: [x, toX].flatMap((end) => [end - margin, end - aside, end + aside, end + margin]),
  };
}

/** The heights at which a multiple of them lies between two bounds. */
function between(from: number, to: number, times: number): Stretch {
  if (times === 0) return from <= 0 && to >= 0 ? [-Infinity, Infinity] : [0, 0];
  return times > 0 ? [from / times, to / times] : [to / times, from / times];
}

function stretchesOf(heights: readonly number[]): readonly Stretch[] {
  return Array.from({ length: Math.floor(heights.length / 2) }, (_, index): Stretch => [
    heights[2 * index] as number,
    heights[2 * index + 1] as number,
  ]);
}

/** Stretches as few that do not overlap, from below. */
function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const apart: Stretch[] = [];
  for (const [low, high] of [...stretches].sort(([one], [other]) => one - other)) {
    const last = apart[apart.length - 1];
    if (last !== undefined && low <= last[1])
      apart[apart.length - 1] = [last[0], Math.max(last[1], high)];
    else apart.push([low, high]);
  }
  return apart;
}

function sharedHeight(one: readonly Stretch[], other: readonly Stretch[]): number {
  let sum = 0;
  for (const [low, high] of one) {
    for (const [otherLow, otherHigh] of other) {
      sum += Math.max(0, Math.min(high, otherHigh) - Math.max(low, otherLow));
    }
  }
  return sum;
}

/** Verticals on a stretch lie so far apart at most, in the polygon's unit, and there are so many at least. */
const APART = 0.05;
const LEAST = 8;

/** Middle ordinates that crowd towards both ends, where discs begin with a vertical tangent. */
function overStretch(heightAt: (x: number) => number, from: number, to: number): number {
  if (!(to > from)) return 0;
  const count = LEAST + Math.ceil((to - from) / APART);
  let sum = 0;
  for (let index = 0; index < count; index += 1) {
    const angle = (Math.PI * (index + 0.5)) / count;
    const x = (from + to) / 2 - ((to - from) / 2) * Math.cos(angle);
    sum += heightAt(x) * Math.sin(angle);
  }
  // The sines of the middles sum up to a little more than 2/π of their count.
  return sum * (to - from) * Math.sin(Math.PI / (2 * count));
}
