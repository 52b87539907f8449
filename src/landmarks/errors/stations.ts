import { distance } from "../../geometry/index.js";
import type { Point, Polyline, Unit } from "../../units/index.js";

/** Share of a line's length before each of its points. */
function sharesAlong<U extends Unit>(line: Polyline<U>): readonly number[] {
  let sum = 0;
  const before = line.map((point, at) => (sum += distance(line[at - 1] ?? point, point)));
  return before.map((length) => length / (sum || 1));
}

/** At most so many points of a line err by themselves; ours. */
const MOST = 12;
/** What lies off a straight line by less does so by rounding, in the line's unit. */
const STRAIGHT = 1e-6;

/**
 * How far each point of a line errs with each of its stations, in parts of that station's error.
 *
 * A hand that draws a line errs smoothly along it: only stations err by themselves, and a point between
 * two of them with both, by its share of the way. Stations are the ends and then, one by one, what lies
 * farthest from the line through those before: so it does not matter how densely a line is drawn.
 */
export function stationErrors<U extends Unit>(line: Polyline<U>): readonly (readonly number[])[] {
  const shares = sharesAlong(line);
  const stations = line.length < 3 ? [...line.keys()] : [0, line.length - 1];
  for (;;) {
    const errors = stations.map((station, order) => {
      const from = shares[station] as number;
      return shares.map((share, at) => {
        const beside = shares[stations[at < station ? order - 1 : order + 1] as number] as number;
        return at === station ? 1 : Math.max(0, 1 - (share - from) / (beside - from));
      });
    });
    const off = line.map((point, at) => {
      let x: number = point[0];
      let y: number = point[1];
      stations.forEach((station, order) => {
        const [share, by] = [errors[order]?.[at] as number, line[station] as Point<U>];
        x -= share * by[0];
        y -= share * by[1];
      });
      return Math.hypot(x, y);
    });
    const most = Math.max(...off);
    if (stations.length >= MOST || !(most > STRAIGHT)) return errors;
    stations.push(off.indexOf(most));
    stations.sort((one, other) => one - other);
  }
}

/** How many of a line's stations lie before each of its points, in parts of those that can. */
export function stationsPassed<U extends Unit>(line: Polyline<U>): readonly number[] {
  const stations = stationErrors(line);
  const passed = (at: number): number =>
    stations.reduce((sum, shares, order) => sum + order * (shares[at] as number), 0);
  return line.map((_, at) => passed(at) / (stations.length - 1 || 1));
}
