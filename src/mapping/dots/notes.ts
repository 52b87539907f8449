import type {
  ArchConvention,
  Dot,
  Mark,
  StartConvention,
  TailConvention,
} from "../../landmarks/index.js";
import type { Station } from "../../proportions/index.js";
import type { Note, Side } from "../../units/index.js";
import { type CodeOf, type NoteMaker, noteMaker } from "../../units/internal.js";
import type { NoValues, Numbers } from "../../units/internal.js";
import type { TailHeight } from "../choices/choice-tables.js";
import type { ArchLimit } from "./arch-limits.js";

/** Codes of the reasons that a plan gives, by what they are about. */
export const REASONS_FOR = {
  lead: ["lead-middle", "lead-side", "lead-side-by-measure"],
  levels: ["levels-middle", "levels-side", "levels-held-back", "levels-left"],
  start: [
    "start-at-alare",
    "start-at-endocanthion-nose-wide",
    "start-at-endocanthion-stand-in",
    "start-at-endocanthion-nose-bent",
    "start-at-endocanthion-nose-deviates",
    "start-chosen",
  ],
  arch: [
    "hair-not-seen",
    "arch-natural",
    "arch-moved-outward",
    "arch-moved-inward",
    "arch-flat",
    "arch-undetermined",
    "arch-share-beyond",
    "arch-share-nowhere",
    "arch-chosen",
  ],
  tail: ["tail-at-guide", "tail-level-nowhere"],
  thickness: [
    "thickness-natural",
    "thickness-evened",
    "thickness-usual",
    "thickness-chosen",
    "thickness-assumed",
  ],
  events: [
    "hair-kept",
    "border-extended",
    "tail-completed",
    "guide-missed",
    "carried-by-measure",
    "pinned",
    "pins-break-levels",
    "pins-break-tail-heights",
    "pins-break-distances",
    "pins-break-thickness",
    "pins-break-share",
  ],
} as const;

/** Codes of the reasons that a plan gives. */
export type ReasonCode = CodeOf<(typeof REASONS_FOR)[keyof typeof REASONS_FOR], ReasonNotes>;

export const REASON_CODES: readonly ReasonCode[] = /* @__PURE__ */ (() =>
  Object.values(REASONS_FOR).flat())();

interface OfSide {
  readonly side: Side;
}

/** How far lateral of each inner eye corner the nose wing lies, and how far it may. */
type NoseWings = Numbers<"right" | "left" | "limit">;

type Thicknesses = Numbers<Station>;

/** How far a natural arch lies beyond a vertical, and how surely it lies where it was seen. */
type PastLimit = OfSide & Numbers<"distance" | "u"> & { readonly limit: ArchLimit["convention"] };

/** Where an arch stands instead, the share that was asked for and the one that the front takes there. */
type KeptArch = Numbers<"asked" | "share"> & { readonly limit: ArchLimit["convention"] };

/** A guide that does not meet the hair of a brow. */
type Missed = OfSide & { readonly mark: Mark };

/** What pins leave uneven: by how much, and what would have been allowed. */
type Uneven = Numbers<"difference" | "limit">;

/** Why the dots of a plan lie where they do, each with its values. */
export interface ReasonNotes {
  readonly "lead-middle": NoValues;
  readonly "lead-side": { readonly lead: Side };
  readonly "lead-side-by-measure": { readonly lead: Side };
  readonly "levels-middle": NoValues;
  readonly "levels-side": { readonly levels: Side };
  /** The greatest difference in height that evening left, and what clients and others notice. */
  readonly "levels-left": Numbers<"most" | "clients" | "others">;
  readonly "levels-held-back": Uneven & { readonly dot: Dot; readonly higher: Side };
  readonly "start-at-alare": NoseWings;
  readonly "start-at-endocanthion-nose-wide": NoseWings;
  readonly "start-at-endocanthion-stand-in": NoseWings & { readonly instead: string };
  readonly "start-at-endocanthion-nose-bent": NoseWings;
  readonly "start-at-endocanthion-nose-deviates": Numbers<"angle" | "u" | "limit">;
  readonly "start-chosen": { readonly convention: StartConvention };
  /** In eye widths from the inner eye corner; how surely it lies there, in mm. */
  readonly "arch-natural": OfSide & Numbers<"share" | "u">;
  readonly "arch-moved-outward": PastLimit;
  readonly "arch-moved-inward": PastLimit;
  readonly "arch-flat": OfSide & Numbers<"rise" | "share">;
  readonly "arch-undetermined": OfSide & Numbers<"u" | "share">;
  readonly "arch-share-beyond": KeptArch & Numbers<"distance">;
  readonly "arch-share-nowhere": KeptArch;
  readonly "arch-chosen": { readonly convention: ArchConvention };
  readonly "tail-at-guide": { readonly guide: TailConvention; readonly height: TailHeight };
  /** The level that was asked for, and that no tail end beyond the arch has. */
  readonly "tail-level-nowhere": ReasonNotes["tail-at-guide"];
  readonly "thickness-natural": Thicknesses;
  readonly "thickness-evened": Thicknesses;
  readonly "thickness-usual": Thicknesses & Numbers<"u">;
  readonly "thickness-chosen": Thicknesses;
  readonly "thickness-assumed": Thicknesses & { readonly assumed: readonly Station[] };
  /** A brow without hair that is known, and what stands in for it. */
  readonly "hair-not-seen": OfSide & { readonly instead: string };
  /** How far past a guide hair grows, sideways, and how much of that is kept. */
  readonly "hair-kept": Missed & Numbers<"past" | "kept">;
  readonly "border-extended": Missed;
  readonly "guide-missed": Missed;
  /** How far hair ends before the tail's guide, sideways. */
  readonly "tail-completed": OfSide & Numbers<"distance">;
  /** How much farther out than mirrored arch and tail end lie. */
  readonly "carried-by-measure": OfSide & Numbers<"arch" | "tail">;
  /** Who fixed it, and why; the latter is empty where nobody said. */
  readonly pinned: OfSide & {
    readonly dot: Dot;
    readonly by: string | Note<"the-artist">;
    readonly reason: "" | Note<"pin-reason">;
  };
  readonly "pins-break-levels": Uneven & { readonly dot: Dot; readonly higher: Side };
  readonly "pins-break-tail-heights": Uneven & { readonly higher: Side };
  readonly "pins-break-distances": Uneven & { readonly dot: Dot; readonly farther: Side };
  readonly "pins-break-thickness": Uneven & { readonly station: Station; readonly thicker: Side };
  readonly "pins-break-share": OfSide & Numbers<"share" | "asked" | "limit">;
}

/** What reasons hold within them. */
export interface ReasonNoteParts {
  /** Who pinned a dot, where nobody is named. */
  readonly "the-artist": NoValues;
  /** Why, in the words of whoever pinned it. */
  readonly "pin-reason": { readonly reason: string };
}

export const reason: NoteMaker<ReasonNotes & ReasonNoteParts> = /* @__PURE__ */ noteMaker();
