import type { Dot } from "../../landmarks/index.js";
import type { Station } from "../../proportions/index.js";
import type { Side } from "../../units/index.js";
import type { CodeOf, Numbers } from "../../units/internal.js";

export const SHAPE_CODES = [
  "tail-steep",
  "front-steep",
  "tail-above-arch",
  "tail-below-start",
  "thickens-outward",
  "lid-space-closes",
  "dot-far-off",
] as const;

/** What is to be looked at in the shape of a plan. */
export type ShapeCode = CodeOf<typeof SHAPE_CODES, ShapeNotes>;

/** What was read on a brow, and what it exceeds. */
export type Beyond = Numbers<"value" | "limit"> & { readonly side: Side };

/** What is to be looked at in the shape of a plan, each with its values. */
export interface ShapeNotes {
  readonly "tail-steep": Beyond;
  readonly "front-steep": Beyond;
  readonly "tail-above-arch": Beyond;
  readonly "tail-below-start": Beyond;
  readonly "thickens-outward": Beyond & { readonly station: Station };
  readonly "lid-space-closes": Beyond;
  readonly "dot-far-off": Beyond & { readonly dot: Dot };
}
