import {
  type DeepPoint,
  deepPoint,
  type Length,
  length,
  type Point,
  type Unit,
} from "../../units/index.js";
import { integrateRow } from "./integrate.js";

/** A surface over the plane, everything in one unit. */
export interface Surface {
  /** Depth over a place. */
  readonly depth: (x: number, y: number) => number;
  /** Depth gained on a small step from a place, over its smallness: the directional derivative. */
  readonly rise: (x: number, y: number, stepX: number, stepY: number) => number;
}

/** The point of a surface over a point of the plane; depth of the point itself does not matter. */
export function liftOnto<U extends Unit>(at: Point<U>, { depth }: Surface): DeepPoint<U> {
  return deepPoint(at[0], at[1], depth(at[0], at[1]));
}

/**
 * Length of the curve that lies on a surface over a straight stretch of the plane: by tape. Good to
 * 1e-10 where the surface has no kink under the stretch.
 */
export function lengthAlongSurface<U extends Unit>(
  from: Point<U>,
  to: Point<U>,
  { rise }: Surface,
): Length<U> {
  const stepX = to[0] - from[0];
  const stepY = to[1] - from[1];
  const across = stepX * stepX + stepY * stepY;
  return length(
    integrateRow(0, 1, (row, size) => {
      for (let index = 0; index < size; index += 1) {
        const share = row[index] as number;
        const slope = rise(from[0] + share * stepX, from[1] + share * stepY, stepX, stepY);
        row[index] = Math.sqrt(across + slope * slope);
      }
    }),
  );
}
