import type { OutlineOptions } from "../../proportions/index.js";
import type { Choices } from "./choices.js";
import type { Carry, CHOSEN_SHARES, Lead, Levels, TailHeight } from "./choice-tables.js";

/** Which brow leads. */
export const LEAD_WORDS: { readonly [Word in Lead]: string } = {
  right: "right leads",
  left: "left leads",
  middle: "both meet half-way",
};

/** How the other brow follows. */
export const CARRY_WORDS: { readonly [Word in Carry]: string } = {
  mirror: "mirrored",
  measure: "carried by measure",
};

/** Whose heights both brows take. */
export const LEVELS_WORDS: { readonly [Word in Levels]: string } = {
  right: "heights of the right brow",
  left: "heights of the left brow",
  middle: "heights half-way",
  higher: "heights of the higher brow",
};

/** Where the tail ends along its guide, as the end of a phrase such as "tail …". */
export const TAIL_HEIGHT_WORDS: { readonly [Word in TailHeight]: string } = {
  natural: "at the height where it meets the hair",
  "level-with-lower-start": "level with the lower start dot",
  "level-with-upper-start": "level with the upper start dot",
};

/** Shares that may be chosen. */
export const SHARE_WORDS: { readonly [Name in keyof typeof CHOSEN_SHARES]: string } = {
  eyeWidthShare: "share of the eye’s width",
  frontShare: "front share",
};

/** What shapes an outline. */
export const SHAPE_WORDS: { readonly [Name in keyof OutlineOptions]-?: string } = {
  angularity: "angularity",
  startSlope: "slope at the start",
  tailSlope: "slope at the tail end",
  frontRoundness: "roundness of the front",
};

/** Every choice, where it stands in the way of a plan. */
export const FIELD_WORDS: { readonly [Name in keyof Choices]-?: string } = {
  lead: "leading brow",
  carry: "way of carrying",
  levels: "levels",
  levelLimit: "limit of levels",
  start: "start",
  arch: "arch",
  tail: "tail",
  tailHeight: "height of the tail end",
  thickness: "thickness",
  shape: "shape",
  noseBent: "bent nose",
  pins: "pins",
  rule: "rule",
  tolerances: "tolerances",
  declared: "what was declared",
  ...SHARE_WORDS,
};

/** A thickness that was chosen. */
export const THICKNESS_WORDS = "thickness at the {station}";

/** A pin, counted from 1. */
export const PIN_WORDS = "pin {number}";

/** What dots need that are out of order, and which of them are pinned. */
export const ORDER_WORDS = {
  nearer: "a place nearer the midline than the {dot} at {place}",
  above: "a place above the {dot} at {place}",
  pinned: "{need}; pinned: {pins}",
} as const;
