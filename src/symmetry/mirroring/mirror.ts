import { type Line, reflectAcross } from "../../geometry/index.js";
import type { Brow, BrowDots, CompleteDots, Face } from "../../landmarks/index.js";
import {
  type DeepPoint,
  type FlatPoint,
  flatPoint,
  type Point,
  type Polyline,
  type Unit,
} from "../../units/index.js";
import { isFace, mapShape, type Shape } from "./shape.js";

/** The midline of the face space: the line x = 0, upwards. */
export const FACE_MIDLINE: Line<"mm"> = { through: flatPoint(0, 0), direction: [0, 1] };

/**
 * The mirror image of a point, a polyline, a brow, its dots or a whole face across a line; depth
 * stays as it is. A whole face changes sides: what was the client's right is then the left.
 *
 * @example
 * ```ts
 * import { FACE_MIDLINE, mirror, mm } from "brow-geometry";
 * import { lineThrough } from "brow-geometry/geometry";
 * mirror(mm([3, 1]), lineThrough(mm([0, 0]), mm([1, 2]))); // → [-1.000, 3.000]
 * mirror({ upper: mm([[14, 20], [38, 26], [58, 17]]) }, FACE_MIDLINE).upper[0]; // → [-14, 20]
 * ```
 */
export function mirror<U extends Unit>(of: FlatPoint<U>, across: Line<U>): FlatPoint<U>;
export function mirror<U extends Unit>(of: DeepPoint<U>, across: Line<U>): DeepPoint<U>;
export function mirror<U extends Unit>(of: Point<U>, across: Line<U>): Point<U>;
export function mirror<U extends Unit>(of: Polyline<U>, across: Line<U>): Polyline<U>;
export function mirror<U extends Unit>(of: Face<U>, across: Line<U>): Face<U>;
export function mirror<U extends Unit>(of: Brow<U>, across: Line<U>): Brow<U>;
export function mirror<U extends Unit>(of: CompleteDots<U>, across: Line<U>): CompleteDots<U>;
export function mirror<U extends Unit>(of: BrowDots<U>, across: Line<U>): BrowDots<U>;
export function mirror<U extends Unit>(of: Shape<U>, across: Line<U>): Shape<U> {
  const image = mapShape<U, U>(of, (point) => reflectAcross(point, across));
  return isFace(image) ? withSidesExchanged(image) : image;
}

function withSidesExchanged<U extends Unit>(face: Face<U>): Face<U> {
  const { right, left, symmetricPoints } = face;
  const exchanged = { ...face, right: left, left: right };
  if (symmetricPoints === undefined) return exchanged;
  const pairs = symmetricPoints.pairs.map((pair) => ({ right: pair.left, left: pair.right }));
  return { ...exchanged, symmetricPoints: { ...symmetricPoints, pairs } };
}
