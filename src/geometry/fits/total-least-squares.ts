import {
  type FlatPoint,
  flatPoint,
  type Length,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { refusingAs, refuse, requirePolyline } from "../../units/internal.js";
import { distanceFromLine, type Line, lineAlong } from "../lines/line.js";
import { difference } from "../lines/vector.js";

/** The line that runs closest to points. */
export interface LineFit<U extends Unit> {
  /** Through the points' mean, from the first of them towards the last. */
  readonly line: Line<U>;
  /** Signed distance of each point, as `distanceFromLine` has it. */
  readonly residuals: readonly Length<U>[];
  readonly sumOfSquares: number;
}

/**
 * The line whose squared distances from points add up to least, no axis being favoured: total least
 * squares. Depth is ignored.
 *
 * @throws GeometryError `wrong-count` for fewer than two points, `not-finite`, `coincident-points`,
 * `ill-conditioned` where the points scatter alike in every direction
 *
 * @example
 * ```ts
 * import { fitLine } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * const fit = fitLine(mm([[0, 0.1], [10, -0.1], [20, -0.1], [30, 0.1]]));
 * fit.line.direction; // → [1.000, 0.000]
 * fit.residuals; // → [0.1, -0.1, -0.1, 0.1]
 * ```
 */
export function fitLine<U extends Unit>(points: Polyline<U>): LineFit<U> {
  return refusingAs("fitLine", () => {
    requirePolyline("points", points, 2);
    const centre = meanOf(points);
    let [sumXX, sumXY, sumYY] = [0, 0, 0];
    for (const point of points) {
      const [x, y] = difference(point, centre);
      sumXX += x * x;
      sumXY += x * y;
      sumYY += y * y;
    }
    const scatter = sumXX + sumYY;
    if (!(Math.hypot(sumXX - sumYY, 2 * sumXY) > ROUND * scatter)) {
      const code = scatter > 0 ? "ill-conditioned" : "coincident-points";
      refuse(code, "points", points, "points that spread along one direction");
    }
    const angle = Math.atan2(2 * sumXY, sumXX - sumYY) / 2;
    const line = forwards(points, lineAlong(centre, [Math.cos(angle), Math.sin(angle)]));
    const residuals = points.map((point) => distanceFromLine(point, line));
    return {
      line,
      residuals,
      sumOfSquares: residuals.reduce((sum, residual) => sum + residual * residual, 0),
    };
  });
}

export function meanOf<U extends Unit>(points: Polyline<U>): FlatPoint<U> {
  let [x, y] = [0, 0];
  for (const point of points) {
    x += point[0] / points.length;
    y += point[1] / points.length;
  }
  return flatPoint(x, y);
}

/** The axis of a scatter has no sense of its own: that of the points' order is given to it. */
function forwards<U extends Unit>(points: Polyline<U>, line: Line<U>): Line<U> {
  const [first, last] = [points[0], points[points.length - 1]];
  if (first === undefined || last === undefined) return line;
  const [x, y] = difference(last, first);
  const [alongX, alongY] = line.direction;
  return x * alongX + y * alongY < 0 ? { ...line, direction: [-alongX, -alongY] } : line;
}

/** Scatter that differs by less than this share between directions points nowhere. */
const ROUND = 1e-9;
