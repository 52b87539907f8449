import {
  type FlatPoint,
  flatPoint,
  type Length,
  length,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { refusingAs, refuse, requirePolyline } from "../../units/internal.js";
import { leastSquares } from "./least-squares.js";
import { meanOf } from "./total-least-squares.js";
import { difference, type Vector } from "../lines/vector.js";

/** The circle that runs closest to points. */
export interface CircleFit<U extends Unit> {
  readonly centre: FlatPoint<U>;
  readonly radius: Length<U>;
  /** Distance of each point from the rim, positive outside. */
  readonly residuals: readonly Length<U>[];
  readonly sumOfSquares: number;
}

/**
 * The circle whose squared distances from points add up to least: the geometric fit. Depth is
 * ignored.
 *
 * Source: Gander, Golub & Strebel, BIT 1994;34:558–578.
 *
 * @throws GeometryError `wrong-count` for fewer than three points, `not-finite`, `ill-conditioned`
 * where the points lie on a line or hardly bend
 *
 * @example
 * ```ts
 * import { fitCircle } from "brow-geometry/geometry";
 * import { px } from "brow-geometry";
 * const rim = fitCircle(px([[10, 0], [0, 10], [-10, 0], [0, -10.4]]));
 * rim.centre; // → [0.0, -0.2]
 * rim.radius; // → 10.1
 * ```
 */
export function fitCircle<U extends Unit>(points: Polyline<U>): CircleFit<U> {
  return refusingAs("fitCircle", () => {
    requirePolyline("points", points, 3);
    // About the points' mean, so that a small rim far from the origin keeps its digits.
    const mean = meanOf(points);
    const places = points.map((point) => difference(point, mean));
    const rim = geometricFit(places);
    if (rim === undefined) {
      refuse("ill-conditioned", "points", points, "points that bend round a centre");
    }
    return {
      centre: flatPoint(mean[0] + rim.x, mean[1] + rim.y),
      radius: length(rim.radius),
      residuals: rim.residuals.map((residual) => length<U>(residual)),
      sumOfSquares: rim.sumOfSquares,
    };
  });
}

/** A circle and how far places lie off it, outside positive. */
interface Rim {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly residuals: readonly number[];
  readonly sumOfSquares: number;
}

type Step = readonly [x: number, y: number, radius: number];

const MOST_ROUNDS = 500;
/** A step smaller than this share of the radius is rounding. */
const SETTLED = 1e-13;
/** A sum of squares that grows by less than this share has not grown. */
const ROUNDING = 1e-9;

function geometricFit(places: readonly Vector[]): Rim | undefined {
  let rim = algebraicFit(places);
  for (let round = 0; rim !== undefined && round < MOST_ROUNDS; round += 1) {
    const step = stepFrom(places, rim);
    if (step === undefined) return undefined;
    if (Math.hypot(...step) <= SETTLED * rim.radius) return rim;
    const next = improvedBy(places, rim, step);
    if (next === undefined) return rim;
    rim = next;
  }
  return undefined;
}

function rimAt(places: readonly Vector[], x: number, y: number, radius: number): Rim {
  const residuals = places.map((place) => Math.hypot(place[0] - x, place[1] - y) - radius);
  const sumOfSquares = residuals.reduce((sum, residual) => sum + residual * residual, 0);
  return { x, y, radius, residuals, sumOfSquares };
}

/** A start in one step: x² + y² as a sum of x, y and 1. */
function algebraicFit(places: readonly Vector[]): Rim | undefined {
  const factors = leastSquares(
    places.map(([x, y]) => [2 * x, 2 * y, 1]),
    places.map(([x, y]) => x * x + y * y),
  );
  if (factors === undefined) return undefined;
  const [x, y, rest] = factors as Step;
  return rimAt(places, x, y, Math.sqrt(rest + x * x + y * y));
}

/** Gauss and Newton's step: how far centre and radius have to go if residuals grew evenly. */
function stepFrom(places: readonly Vector[], { x, y, residuals }: Rim): Step | undefined {
  const outwards = places.map((place) => {
    const [right, up] = [place[0] - x, place[1] - y];
    const away = Math.hypot(right, up);
    return away === 0 ? [0, 0, 1] : [right / away, up / away, 1];
  });
  return leastSquares(outwards, residuals) as Step | undefined;
}

/** The fit after a step, or after as much of it as does not make it worse; undefined at its best. */
function improvedBy(places: readonly Vector[], rim: Rim, step: Step): Rim | undefined {
  for (let share = 1; share > ROUNDING; share /= 2) {
    const [x, y, wider] = step.map((part) => share * part) as unknown as Step;
    const next = rimAt(places, rim.x + x, rim.y + y, rim.radius + wider);
    if (next.radius > 0 && next.sumOfSquares <= rim.sumOfSquares * (1 + ROUNDING)) return next;
  }
  return undefined;
}
