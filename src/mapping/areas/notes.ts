import type { Dot } from "../../landmarks/index.js";
import type { Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type Numbers } from "../../units/internal.js";

/** Codes of what there is to say of an area of skin. */
export type AreaCode = keyof AreaNotes;

interface OfArea {
  /** What the area is called. */
  readonly name: string;
}

/** What lies where it should not, how far at most, and next to which dot. */
interface Beyond extends OfArea, Numbers<"area" | "distance"> {
  readonly side: Side;
  readonly dot: Dot;
}

/** What there is to say of an area of skin; lengths in millimetres, areas in square millimetres. */
export interface AreaNotes {
  readonly "area-covered": OfArea;
  readonly "area-sticks-out": Beyond;
  readonly "area-clear": OfArea;
  readonly "area-overlapped": Beyond;
  /** What keeps brows from becoming wider. */
  readonly "area-in-the-way": OfArea;
}

export const areaNote: NoteMaker<AreaNotes> = /* @__PURE__ */ noteMaker();
