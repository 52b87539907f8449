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
import type { Direction } from "../lines/line.js";
import { meanOf } from "./total-least-squares.js";
import { difference, type Vector } from "../lines/vector.js";

/** The ellipse that runs closest to points. */
export interface EllipseFit<U extends Unit> {
  readonly centre: FlatPoint<U>;
  readonly semiMajor: Length<U>;
  readonly semiMinor: Length<U>;
  /** Along the longer axis; of no meaning where both are equal. */
  readonly major: Direction;
  /** Distance of each point from the rim to first order, positive outside. */
  readonly residuals: readonly Length<U>[];
}

/**
 * The ellipse that runs closest to points: least squares of x² + y² less a sum of its five terms,
 * each point weighed by how fast that sum changes across the rim, so that distances count. Depth is
 * ignored.
 *
 * @throws GeometryError `wrong-count` for fewer than five points, `not-finite`, `ill-conditioned`
 * where no ellipse runs along the points
 *
 * @example
 * ```ts
 * import { fitEllipse } from "brow-geometry/geometry";
 * import { px } from "brow-geometry";
 * const rim = fitEllipse(px([[10, 0], [6, 4], [0, 5], [-8, 3], [-6, -4]]));
 * rim.semiMajor; // → 10.00
 * rim.semiMinor; // → 5.00
 * ```
 */
export function fitEllipse<U extends Unit>(points: Polyline<U>): EllipseFit<U> {
  return refusingAs("fitEllipse", () => {
    requirePolyline("points", points, 5);
    // About the points' mean and in their own size, so that all terms are of one order.
    const mean = meanOf(points);
    const offsets = points.map((point) => difference(point, mean));
    const size = Math.sqrt(offsets.reduce((sum, [x, y]) => sum + x * x + y * y, 0) / points.length);
    const places: readonly Vector[] = offsets.map(([x, y]) => [x / size, y / size]);
    const conic = conicThrough(places);
    const shape = conic && shapeOf(conic, mean, size);
    if (conic === undefined || shape === undefined) {
      refuse("ill-conditioned", "points", points, "points that lie along an ellipse");
    }
    const residuals = places.map((place) =>
      length<U>((size * excess(conic, place)) / steepness(conic, place)),
    );
    return { ...shape, residuals };
  });
}

/** x² + y² + p (x² − y²) + 2 q x y + d x + e y + f = 0: a circle where p and q are 0. */
interface Conic {
  readonly p: number;
  readonly q: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

const MOST_ROUNDS = 50;
/** Factors that change by less are settled. */
const SETTLED = 1e-12;

function conicThrough(places: readonly Vector[]): Conic | undefined {
  let conic: Conic = { p: 0, q: 0, d: 0, e: 0, f: -1 };
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const weights = places.map((place) => 1 / Math.max(steepness(conic, place), Number.EPSILON));
    const factors = leastSquares(
      places.map(([x, y], index) => {
        const weight = weights[index] as number;
        return [x * x - y * y, 2 * x * y, x, y, 1].map((term) => weight * term);
      }),
      places.map(([x, y], index) => -(weights[index] as number) * (x * x + y * y)),
    );
    if (factors === undefined) return undefined;
    const [p, q, d, e, f] = factors as [number, number, number, number, number];
    const change = Math.max(
      ...[p - conic.p, q - conic.q, d - conic.d, e - conic.e, f - conic.f].map(Math.abs),
    );
    conic = { p, q, d, e, f };
    if (change < SETTLED) break;
  }
  return conic;
}

function excess({ p, q, d, e, f }: Conic, [x, y]: Vector): number {
  return x * x + y * y + p * (x * x - y * y) + 2 * q * x * y + d * x + e * y + f;
}

/** How fast the excess grows across the rim. */
function steepness({ p, q, d, e }: Conic, [x, y]: Vector): number {
  return Math.hypot(2 * (1 + p) * x + 2 * q * y + d, 2 * (1 - p) * y + 2 * q * x + e);
}

function shapeOf<U extends Unit>(
  conic: Conic,
  mean: FlatPoint<U>,
  size: number,
): Omit<EllipseFit<U>, "residuals"> | undefined {
  const { p, q, d, e } = conic;
  const flattening = Math.hypot(p, q);
  const determinant = 1 - flattening * flattening;
  if (!(determinant > 0)) return undefined;
  const x = ((p - 1) * d + q * e) / (2 * determinant);
  const y = (q * d - (1 + p) * e) / (2 * determinant);
  const square = -excess(conic, [x, y]);
  if (!(square > 0)) return undefined;
  // The matrix [1 + p, q; q, 1 − p] is smallest, and the rim farthest, across the axis of (p, q).
  const angle = (Math.atan2(q, p) + Math.PI) / 2;
  return {
    centre: flatPoint(mean[0] + size * x, mean[1] + size * y),
    semiMajor: length(size * Math.sqrt(square / (1 - flattening))),
    semiMinor: length(size * Math.sqrt(square / (1 + flattening))),
    major: [Math.cos(angle), Math.sin(angle)],
  };
}
