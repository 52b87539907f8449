import { flatPoint, type Point, type Side } from "../units/index.js";

/** Where a point lies on its own side: the same on both sides is what "even" means. */
export interface SidePlace {
  /** From the midline, positive on the side itself. */
  readonly distance: number;
  /** Above the level of the inner eye corners. */
  readonly height: number;
}

export function placeOnSide(point: Point<"mm">, side: Side): SidePlace {
  return { distance: side === "left" ? point[0] : 0 - point[0], height: point[1] };
}

/** The point at a place of a side; without depth. */
export function pointOnSide({ distance, height }: SidePlace, side: Side): Point<"mm"> {
  return flatPoint(side === "left" ? distance : 0 - distance, height);
}
