import {
  deepPoint,
  type FlatPoint,
  flatPoint,
  hasDepth,
  type Length,
  type Point,
  type Unit,
} from "../../units/index.js";
import {
  refusingAs,
  refuse,
  requireFinitePoint,
  requirePositive,
  toDegrees,
  toRadians,
} from "../../units/internal.js";
import { distance } from "../lines/distance.js";

/**
 * A turn, a stretch and a shift of the plane, never a reflection: what brings one figure onto
 * another of the same shape.
 */
export interface Similarity<From extends Unit, To extends Unit> {
  /** Degrees, positive from the x axis towards the y axis. */
  readonly rotation: number;
  /** Length there for a length here, more than 0. */
  readonly factor: number;
  /** A point here, and where it comes to lie. */
  readonly from: FlatPoint<From>;
  readonly to: FlatPoint<To>;
}

/** A similarity that fits one labelled set of points to another, and what it leaves. */
export interface SimilarityFit<From extends Unit, To extends Unit> {
  readonly similarity: Similarity<From, To>;
  /** How far each point ends from its partner. */
  readonly residuals: readonly Length<To>[];
  /** Weighted sum of their squares. */
  readonly squares: number;
}

/** How {@link fitSimilarity} works. */
export interface SimilarityOptions {
  /** How much each point counts, 0 or more. Default: all alike. */
  readonly weights?: readonly number[];
  /** `"free"` (default), or the factor that is known. */
  readonly factor?: "free" | number;
}

/**
 * The similarity without reflection that brings labelled points closest to their partners, by least
 * squares; depth is ignored.
 *
 * In the plane the answer is one division of complex numbers. Points that fit only as a mirror image
 * keep the squares that this leaves.
 *
 * Source: Umeyama, IEEE Trans Pattern Anal Mach Intell 1991;13:376–380.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`; `coincident-points` where the
 * points, or their partners, all lie on one place; `ill-conditioned` where no turn is better than
 * another
 *
 * @example
 * ```ts
 * import { fitSimilarity } from "brow-geometry/geometry";
 * import { mm, px } from "brow-geometry";
 * const { similarity, squares } = fitSimilarity(
 *   px([[100, 100], [200, 100], [200, 150]]),
 *   mm([[0, 0], [0, 20], [-10, 20]]),
 * );
 * similarity.rotation; // → 90
 * similarity.factor; // → 0.2
 * squares; // → 0
 * ```
 */
export function fitSimilarity<From extends Unit, To extends Unit>(
  points: readonly Point<From>[],
  partners: readonly Point<To>[],
  options: SimilarityOptions = {},
): SimilarityFit<From, To> {
  return refusingAs("fitSimilarity", () => {
    const { weights = points.map(() => 1), factor = "free" } = options;
    requireFigures(points, partners, weights);
    if (factor !== "free") requirePositive("factor", factor);
    const from = centroid(points, weights);
    const to = centroid(partners, weights);
    const { real, imaginary, size } = products(points, partners, weights, from, to);
    const pull = Math.hypot(real, imaginary);
    if (!(size > 0)) {
      refuse("coincident-points", "points", points, "two points that differ and count");
    }
    if (!(pull > 0)) {
      const need = "points that suit their partners better in one turn than in others";
      refuse("ill-conditioned", "partners", partners, need);
    }
    const similarity = {
      rotation: toDegrees(Math.atan2(imaginary, real)),
      factor: factor === "free" ? pull / size : factor,
      from,
      to,
    };
    const residuals = points.map((point, index) =>
      distance(transform(point, similarity), partners[index] as Point<To>),
    );
    const squares = residuals.reduce(
      (sum, residual, index) => sum + (weights[index] as number) * residual ** 2,
      0,
    );
    return { similarity, residuals, squares };
  });
}

/**
 * Where a similarity takes a point; depth is stretched with the rest.
 *
 * @example
 * ```ts
 * import { mm, px } from "brow-geometry";
 * import { transform } from "brow-geometry/geometry";
 * const similarity = { rotation: 90, factor: 0.2, from: px([100, 100]), to: mm([0, 0]) };
 * transform(px([200, 100]), similarity); // → [0.0, 20.0]
 * ```
 */
export function transform<From extends Unit, To extends Unit>(
  point: Point<From>,
  { rotation, factor, from, to }: Similarity<From, To>,
): Point<To> {
  const angle = toRadians(rotation);
  const cosine = factor * Math.cos(angle);
  const sine = factor * Math.sin(angle);
  const x = point[0] - from[0];
  const y = point[1] - from[1];
  const [toX, toY] = [to[0] + cosine * x - sine * y, to[1] + sine * x + cosine * y];
  return hasDepth(point) ? deepPoint(toX, toY, factor * point[2]) : flatPoint(toX, toY);
}

function centroid<U extends Unit>(
  points: readonly Point<U>[],
  weights: readonly number[],
): FlatPoint<U> {
  let [total, x, y] = [0, 0, 0];
  points.forEach((point, index) => {
    const weight = weights[index] as number;
    total += weight;
    x += weight * point[0];
    y += weight * point[1];
  });
  return flatPoint(x / total, y / total);
}

/** Sum of weight × conjugate point × partner, and of weight × point², about the centroids. */
function products<From extends Unit, To extends Unit>(
  points: readonly Point<From>[],
  partners: readonly Point<To>[],
  weights: readonly number[],
  from: FlatPoint<From>,
  to: FlatPoint<To>,
): { readonly real: number; readonly imaginary: number; readonly size: number } {
  let [real, imaginary, size] = [0, 0, 0];
  points.forEach((point, index) => {
    const weight = weights[index] as number;
    const partner = partners[index] as Point<To>;
    const [x, y] = [point[0] - from[0], point[1] - from[1]];
    const [partnerX, partnerY] = [partner[0] - to[0], partner[1] - to[1]];
    real += weight * (x * partnerX + y * partnerY);
    imaginary += weight * (x * partnerY - y * partnerX);
    size += weight * (x * x + y * y);
  });
  return { real, imaginary, size };
}

function requireFigures<From extends Unit, To extends Unit>(
  points: readonly Point<From>[],
  partners: readonly Point<To>[],
  weights: readonly number[],
): void {
  for (const [field, list] of Object.entries({ partners, weights })) {
    if (points.length >= 2 && list.length === points.length) continue;
    const need = `one for each of at least 2 points, here ${points.length}`;
    refuse("wrong-count", field, list, need);
  }
  points.forEach((point, index) => requireFinitePoint(`points[${index}]`, point));
  partners.forEach((partner, index) => requireFinitePoint(`partners[${index}]`, partner));
  weights.forEach((weight, index) => {
    if (weight >= 0 && Number.isFinite(weight)) return;
    refuse("out-of-range", `weights[${index}]`, weight, "0 or more");
  });
}

/** The way back of a similarity. */
export function inverseOf<From extends Unit, To extends Unit>({
  rotation,
  factor,
  from,
  to,
}: Similarity<From, To>): Similarity<To, From> {
  return { rotation: -rotation, factor: 1 / factor, from: to, to: from };
}
