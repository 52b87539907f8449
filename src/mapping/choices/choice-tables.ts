import { type Length, length, type Side, type Sides } from "../../units/index.js";

/** Which brow the other follows, and whose own dots count then. */
export const LEADS = {
  right: ["right"],
  left: ["left"],
  middle: ["right", "left"],
} as const;

/** Which brow the other follows; `"middle"`: both meet half-way. */
export type Lead = keyof typeof LEADS;

/** All answers to whose heights both brows take. */
export const LEVELS = ["right", "left", "middle", "higher"] as const;

/** Whose heights both brows take; `"higher"`: those of the higher brow. */
export type Levels = (typeof LEVELS)[number];

/** How the other brow follows the leading one, and the plan's reason that says so. */
export const CARRIES = { mirror: "lead-side", measure: "lead-side-by-measure" } as const;

/**
 * How the other brow follows the leading one: `"mirror"`, across the midline; `"measure"`, from its
 * own start, with the leading heights and ruler lengths. On a crooked face they differ.
 */
export type Carry = keyof typeof CARRIES;

/** Where the tail ends along its guide, and the dot that it is level with. */
export const TAIL_HEIGHTS = {
  natural: "none",
  "level-with-lower-start": "lowerStart",
  "level-with-upper-start": "upperStart",
} as const;

/**
 * Where the tail ends along its guide: where the guide meets the natural brow, or level with the
 * lower or the upper start dot. Sources disagree whether start and tail end are level: all three are
 * offered. A level that lies nowhere beyond the arch, as on a head that is turned far, is not taken.
 */
export type TailHeight = keyof typeof TAIL_HEIGHTS;

/** Shares that may be chosen: from, to. */
export const CHOSEN_SHARES = { eyeWidthShare: [0.4, 1.4], frontShare: [0.4, 0.9] } as const;

/** Up to so far past a guide hair stays as it grows, where nothing else is chosen: trade practice, no source. */
export const KEEP_HAIR: Length<"mm"> = /* @__PURE__ */ length(2.5);

/** Of hair that reaches farther a guide takes away no more than this, in mm: trade practice, no source. */
export const MOST_TAKEN = 2.5;

/** Hair may be kept up to so far past a guide, in mm: more than any reaches. */
export const MOST_KEPT = 50;

/** The value that both sides take when one of them leads, or when they meet half-way. */
export function ledBy(lead: Lead, values: Sides<number>): number {
  const sides = ledSides(lead);
  return sides.reduce((sum, side) => sum + values[side], 0) / sides.length;
}

export function ledSides(lead: Lead): readonly Side[] {
  return LEADS[lead];
}
