import { type FlatPoint, flatPoint, type Point, type Polyline, type Side } from "../units/index.js";
import type { Spot } from "./box.js";

/** Both sides as a picture shows them from left to right. */
export const SIDES: readonly Side[] = ["right", "left"];

/** How the face space lies in a picture. */
export interface View {
  readonly place: (point: Point<"mm">) => Spot;
  /** Picture units to one millimetre on the face. */
  readonly size: number;
}

/** The view of a face drawn upright: the face's origin at a spot, y turned downwards. */
export function uprightView(origin: Spot, size: number): View {
  return { place: ([x, y]) => [origin[0] + size * x, origin[1] - size * y], size };
}

/** A polyline as the picture shows it. */
export function placed(polyline: Polyline<"mm">, view: View): readonly Spot[] {
  return polyline.map(view.place);
}

/** The direction, of length 1 in the picture, in which a direction of the face is seen. */
export function seenDirection([x, y]: readonly [number, number], view: View): Spot {
  const origin: FlatPoint<"mm"> = flatPoint(0, 0);
  const [from, to] = [view.place(origin), view.place(flatPoint(x, y))];
  const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
}
