import type { Dot } from "../../landmarks/index.js";

/** What can be wished to be more or less: the dots that it moves, and which way where it is to be more. */
export const WISH_AXES = {
  height: { dots: ["upperStart", "upperArch", "tailEnd"], way: "up" },
  length: { dots: ["tailEnd"], way: "along" },
  thickness: { dots: ["lowerStart", "lowerBody", "lowerArch"], way: "down" },
  spacing: { dots: ["upperStart"], way: "outward" },
  archHeight: { dots: ["upperArch"], way: "up" },
} as const;

/** What a wish moves, and which way. */
export interface WishAxis {
  readonly dots: readonly Dot[];
  /** In the face; `"along"`: as the tail runs from the arch to its end. */
  readonly way: "up" | "down" | "outward" | "along";
}

/**
 * Every wish: of what it asks for more (1) or less (−1).
 *
 * @example
 * ```ts
 * import { WISHES } from "brow-geometry/mapping";
 * WISHES.shorten; // → ["length", -1]
 * ```
 */
export const WISHES = {
  lift: ["height", 1],
  lower: ["height", -1],
  lengthen: ["length", 1],
  shorten: ["length", -1],
  fuller: ["thickness", 1],
  thinner: ["thickness", -1],
  "wider-apart": ["spacing", 1],
  closer: ["spacing", -1],
  "higher-arch": ["archHeight", 1],
  "flatter-arch": ["archHeight", -1],
} as const;

/** What a client may wish for. */
export type WishName = keyof typeof WISHES;
