import { distance } from "../../geometry/index.js";
import type { Point, Polyline, Unit } from "../../units/index.js";

/** At most so many points of a line err by themselves; ours. */
const MOST = 12;
/** What lies off a straight line by less does so by rounding, in the line's unit. */
const STRAIGHT = 1e-6;

/**
 * How many of a line's stations lie before each of its points; of the next one, a share of the way to it.
 *
 * A hand that draws a line errs smoothly along it: only stations err by themselves. They are the ends and then, one
 * by one, what lies farthest from the line through those before: so it does not matter how densely a line is drawn.
 */
export function stationsBefore<U extends Unit>(line: Polyline<U>): readonly number[] {
  let sum = 0;
  const ways = line.map((point, at) => (sum += distance(line[at - 1] ?? point, point)));
  const before = [...line.keys()];
  const stations = line.length < 3 ? before.slice() : [0, line.length - 1];
  for (;;) {
    let next = 1;
    const off = line.map((point, at) => {
      if (at > (stations[next] as number)) next += 1;
      const from = stations[next - 1] as number;
      const to = stations[next] ?? 0;
      const start = line[from] as Point<U>;
      const end = line[to] as Point<U>;
      const way = ways[from] as number;
      const share = ((ways[at] as number) - way) / ((ways[to] as number) - way || 1);
      before[at] = next - 1 + share;
      const x = point[0] - start[0] - share * (end[0] - start[0]);
      return Math.hypot(x, point[1] - start[1] - share * (end[1] - start[1]));
    });
    const most = Math.max(...off);
    if (stations.length >= MOST || most <= STRAIGHT) return before;
    stations.push(off.indexOf(most));
    stations.sort((one, other) => one - other);
  }
}

/** How far each point of a line errs with each of its stations, in parts of that station's error. */
export function stationErrors<U extends Unit>(line: Polyline<U>): readonly (readonly number[])[] {
  const before = stationsBefore(line);
  return Array.from({ length: 1 + (before.at(-1) ?? -1) }, (_, station) =>
    before.map((passed) => Math.max(0, 1 - Math.abs(passed - station))),
  );
}
