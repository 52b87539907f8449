import type { Dot } from "../../landmarks/index.js";
import type { FlatPoint, Length, Note, Polyline, Side } from "../../units/index.js";
import type { AreaCode } from "./notes.js";

/** All answers to what is to happen to an area of skin. */
export const AREA_AIMS = ["cover", "stay-off"] as const;

/** A part of the skin that a plan has to mind, such as old pigment or a scar. */
export interface SkinArea {
  /** What it is called, in the artist's words. */
  readonly name: string;
  /** Whether the brows are to cover it, or to stay off it. */
  readonly aim: (typeof AREA_AIMS)[number];
  /** Its edge in the face space, closed from the last point to the first; at least three points. */
  readonly edge: Polyline<"mm">;
  /** How far around it counts, too, in millimetres. Default 0. */
  readonly margin?: Length<"mm">;
}

/** What a plan does to an area of skin. */
export interface AreaCheck {
  readonly area: SkinArea;
  /** Of the area with its margin, in square millimetres of the frontal view. */
  readonly size: number;
  /** What sticks out of the brows of an area to cover, what they overlap of one to stay off; 0 where nothing does. */
  readonly beyond: number;
  /** How far it sticks out or reaches in at most; 0 where it does not. */
  readonly distance: Length<"mm">;
  /** The place of the area's own edge where that is; absent where nothing is beyond. */
  readonly at?: FlatPoint<"mm">;
  /** The side on which it lies. */
  readonly side: Side;
  /** The planned dot next to that place. */
  readonly dot: Dot;
  readonly note: Note<AreaCode>;
}
