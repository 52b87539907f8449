import { type FlatPoint, flatPoint, type Point, type Side } from "../../units/index.js";

/** Where a point lies on its own side, in mm: the same on both sides is what "even" means. */
export interface SidePlace {
  /** From the midline, positive on the side itself. */
  readonly distance: number;
  /** Above the level of the inner eye corners. */
  readonly height: number;
}

/**
 * Where a point of the face space lies on its side.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { placeOnSide } from "brow-geometry/symmetry";
 * placeOnSide(mm([-42, 26]), "right"); // → { distance: 42, height: 26 }
 * ```
 */
export function placeOnSide(point: Point<"mm">, side: Side): SidePlace {
  const [x, y] = point;
  // Adding 0 turns −0 into 0.
  return { distance: (side === "left" ? x : -x) + 0, height: y };
}

/**
 * The point of the face space at a place of a side; without depth.
 *
 * @example
 * ```ts
 * import { pointOnSide } from "brow-geometry/symmetry";
 * pointOnSide({ distance: 42, height: 26 }, "right"); // → [-42, 26]
 * ```
 */
export function pointOnSide({ distance, height }: SidePlace, side: Side): FlatPoint<"mm"> {
  return flatPoint(side === "left" ? distance : 0 - distance, height);
}
