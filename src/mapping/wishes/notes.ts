import type { Dot, GuideConvention, Mark } from "../../landmarks/index.js";
import type { Station } from "../../proportions/index.js";
import type { Length, Note, Side } from "../../units/index.js";
import { type NoteMaker, noteMaker, type Numbers } from "../../units/internal.js";
import type { ShapeCode } from "../shape/notes.js";
import type { WeighingCode } from "../weighing/notes.js";
import type { WishName } from "./wish-tables.js";

/** What holds a wish back. */
export type WishLimitCode = keyof WishLimitNotes | ShapeCode | Extract<WeighingCode, "no-solution">;

/** Whether a wish was granted whole, or held back. */
export type WishCode = keyof WishNotes;

/** What a wish comes up against, other than the limits of a shape. */
export interface WishLimitNotes {
  /** The last guide that the mark may stand on. */
  readonly "wish-at-guide": { readonly side: Side; readonly guide: GuideConvention };
  /** The hair reaches farther than every guide, and no farther than this. */
  readonly "wish-at-hair": { readonly side: Side; readonly mark: Mark };
  readonly "wish-thin": { readonly side: Side; readonly station: Station } & Numbers<"limit">;
  readonly "wish-at-pin": { readonly side: Side; readonly dot: Dot };
}

/** How much of a wish is granted. */
export interface WishNotes {
  readonly "wish-granted": { readonly wish: WishName; readonly amount: Length<"mm"> };
  readonly "wish-held": {
    readonly wish: WishName;
    readonly why: Note<WishLimitCode>;
  } & Numbers<"amount" | "granted">;
}

export const wishNote: NoteMaker<WishNotes & WishLimitNotes> = /* @__PURE__ */ noteMaker();
