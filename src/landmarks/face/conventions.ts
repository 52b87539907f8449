import { keysOf } from "../../units/internal.js";
import type { SideLandmark } from "./landmarks.js";

/**
 * Every guide: the mark it places, and how it is drawn through landmarks of its own side. A vertical is
 * parallel to the midline. What guides are called stands in the catalogue.
 *
 * Eye widths where no source is named were measured by us on 244 frontal faces.
 *
 * @example
 * ```ts
 * import { GUIDES } from "brow-geometry";
 * GUIDES["alare-vertical"].mark; // → "start"
 * GUIDES["alare-through-exocanthion"].through; // → ["alare", "exocanthion"]
 * ```
 */
export const GUIDES = {
  /**
   * Westmore 1974/75, as reported by Yalçınkaya et al., Eur Arch Otorhinolaryngol,
   * doi 10.1007/s00405-014-3356-0; Alex, Facial Plast Surg 2004;20:193.
   */
  "alare-vertical": {
    mark: "start",
    drawn: "vertical",
    through: ["alare"],
  },
  /** Westmore, as reported there: the one to use where the nose is wide or bent (trade practice, no source). */
  "endocanthion-vertical": {
    mark: "start",
    drawn: "vertical",
    through: ["endocanthion"],
  },
  /** Westmore, as reported by Matros et al., Plast Reconstr Surg 2009;124:1296: about 0.75 eye widths from endocanthion. */
  "lateral-limbus-vertical": {
    mark: "arch",
    drawn: "vertical",
    through: ["limbusLateral"],
  },
  /** Trade practice, no source. Meets a brow about 0.78 eye widths from endocanthion. */
  "alare-through-pupil": {
    mark: "arch",
    drawn: "line",
    through: ["alare", "pupil"],
  },
  /**
   * Counted from the landmark named first: 0.978 ± 0.131 eye widths on 100 models, 0.929 ± 0.146 on
   * 105 women (Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239).
   */
  "eye-width-share": {
    mark: "arch",
    drawn: "share",
    through: ["endocanthion", "exocanthion"],
  },
  /** Sclafani & Jung, Arch Facial Plast Surg 2010;12:123–127, find the arch just medial to it. */
  "exocanthion-vertical": {
    mark: "arch",
    drawn: "vertical",
    through: ["exocanthion"],
  },
  /**
   * Trade practice, no source. On most faces it meets the brow beyond the outer corner of the eye, at
   * about 1.10 eye widths: not to be mistaken for the vertical through the same landmark.
   */
  "alare-through-lateral-limbus": {
    mark: "arch",
    drawn: "line",
    through: ["alare", "limbusLateral"],
  },
  /** Westmore 1974/75, as reported by Yalçınkaya et al. */
  "alare-through-exocanthion": {
    mark: "tail",
    drawn: "line",
    through: ["alare", "exocanthion"],
  },
} as const;

/** The places of a brow that guides aim at. */
export type Mark = (typeof MARKS)[number];

/** All marks. */
export const MARKS = ["start", "arch", "tail"] as const;

/** What {@link GUIDES} says of a guide. */
export type GuideRule = { readonly mark: Mark } & (
  | { readonly drawn: "vertical"; readonly through: readonly [SideLandmark] }
  /** A line from the first through the second, or the vertical at a share of the way between them. */
  | { readonly drawn: "line" | "share"; readonly through: readonly [SideLandmark, SideLandmark] }
);

/** The guides of one mark, or all of them. */
export type GuideConvention<Of extends Mark = Mark> = {
  [Name in keyof typeof GUIDES]: (typeof GUIDES)[Name]["mark"] extends Of ? Name : never;
}[keyof typeof GUIDES];

/** Rules for where a brow starts: a line, or where its hair does. */
export type StartConvention = GuideConvention<"start"> | "natural";

/** All rules for where a brow starts: its own start last. */
export const START_CONVENTIONS: readonly StartConvention[] = /* @__PURE__ */ (() => [
  ...guidesOf("start"),
  "natural",
])();

/** Rules for where a brow peaks that are no line on the face: they read the brow itself. */
export const BROW_ARCHES = ["natural", "brow-length-share"] as const;

/** A rule for where a brow peaks that is no line. */
export type BrowArch = (typeof BROW_ARCHES)[number];

/** Rules for where a brow peaks: a line, the brow's own arch, or a share of its length. */
export type ArchConvention = GuideConvention<"arch"> | BrowArch;

/** All rules for where a brow peaks: its own arch first. */
export const ARCH_CONVENTIONS: readonly ArchConvention[] = /* @__PURE__ */ (() => [
  ...BROW_ARCHES,
  ...guidesOf("arch"),
])();

/** Rules for where a brow ends: a line, or where its hair does. */
export type TailConvention = GuideConvention<"tail"> | "natural";

/** All rules for where a brow ends: its own end last. */
export const TAIL_CONVENTIONS: readonly TailConvention[] = /* @__PURE__ */ (() => [
  ...guidesOf("tail"),
  "natural",
])();

/** A rule for where a brow starts, peaks or ends. */
type Convention = StartConvention | ArchConvention | TailConvention;

/** Whether a rule is a line on the face. */
export function isGuide<Rule extends Convention>(
  rule: Rule,
): rule is Extract<Rule, GuideConvention> {
  return rule in GUIDES;
}

function guidesOf<Of extends Mark>(mark: Of): readonly GuideConvention<Of>[] {
  return keysOf(GUIDES).filter((name): name is GuideConvention<Of> => GUIDES[name].mark === mark);
}
