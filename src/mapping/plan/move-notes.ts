import type { Dot } from "../../landmarks/index.js";
import type { Way } from "../../symmetry/index.js";
import type { Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type Numbers } from "../../units/internal.js";

interface OfDot {
  readonly side: Side;
  readonly dot: Dot;
}

/** What to do with one dot, each with its values; lengths in millimetres. */
export interface MoveNotes {
  readonly "dot-placed": OfDot & Numbers<"distance" | "height">;
  readonly "dot-stays": OfDot;
  readonly "dot-moves": OfDot & { readonly ways: readonly Note<WayCode>[] };
}

/** How far which way. */
export type WayNotes = { readonly [One in Way as `way-${One}`]: Numbers<"by"> };

export type WayCode = keyof WayNotes;

export const moveNote: NoteMaker<MoveNotes & WayNotes> = /* @__PURE__ */ noteMaker();
