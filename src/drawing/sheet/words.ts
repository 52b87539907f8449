import type { Carry, Lead, Levels } from "../../mapping/index.js";

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

/** The title of one page of several. */
export const PAGE = "{title}, page {number} of {of}";

/** Under the small pictures of a choice. */
export const SMALL_PICTURES = { natural: "as they grow", planned: "as planned" } as const;

/** Heads of the columns of tables; the names of the rows need none. */
export const CHECK_HEAD = ["", "planned", "drawn", "drawn − planned", "decision"] as const;
export const STEPS_HEAD = ["", "step", "check by ruler", "it reads"] as const;
export const READINGS_HEAD = [
  "",
  "right, grows",
  "right, planned",
  "left, grows",
  "left, planned",
  "left − right",
  "decision",
] as const;

/** The axes of a dot in the table of a check. */
export const AXES = {
  outward: "{side} {dot}, from the midline",
  up: "{side} {dot}, height",
} as const;

/** What was chosen, where it is more than a word of a table. */
export const CHOSEN = {
  limit: "heights at most {limit} off the hair",
  bent: "nose taken as bent",
  straight: "nose taken as straight",
  start: "start {rule}",
  arch: "arch {rule}",
  tail: "tail {rule}",
  thickness: "{thickness} mm thick",
  pin: "1 dot pinned",
  pins: "{count} dots pinned",
} as const;

/** What a choice would do: the name of each figure, and what stands where there is none. */
export const FIGURES = {
  mean: "mean move",
  greatest: "greatest move",
  hair: "hair to remove",
  skin: "skin to fill",
  apart: "sides apart above tolerance",
  lid: "room over the lid",
  share: "front share",
} as const;

/** Values that stand in the figures of a choice. */
export const VALUES = {
  unknown: "not known",
  nothing: "in nothing",
  both: "{value}, both sides",
} as const;
