import { type FlatPoint, flatPoint, type Point, type Side, type Sides } from "../units/index.js";
import type { Lead } from "./choices.js";

/**
 * Where a dot lies on its own side, in mm: away from the midline and above the inner eye corners.
 * The same place on both sides is what "even" means.
 */
export interface Place {
  readonly distance: number;
  readonly height: number;
}

export function placeOf(point: Point<"mm">, side: Side): Place {
  return { distance: side === "left" ? point[0] : -point[0], height: point[1] };
}

export function pointAt(place: Place, side: Side): FlatPoint<"mm"> {
  return flatPoint(side === "left" ? place.distance : -place.distance, place.height);
}

/** The value that both sides take when one of them leads, or when they meet half-way. */
export function ledBy(lead: Lead, values: Sides<number>): number {
  return lead === "middle" ? (values.right + values.left) / 2 : values[lead];
}

/** The sides whose own dots count: the one that leads, or both. */
export function ledSides(lead: Lead): readonly Side[] {
  return lead === "middle" ? ["right", "left"] : [lead];
}
