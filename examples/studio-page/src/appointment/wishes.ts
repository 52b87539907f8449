import { mm } from "brow-geometry";
import type { Wish, WishName } from "brow-geometry/mapping";
import { text } from "../words/language.js";

/** What a client may wish more or less of, with both names of the wish. */
export const WISH_PAIRS = {
  height: { more: "lift", less: "lower" },
  length: { more: "lengthen", less: "shorten" },
  thickness: { more: "fuller", less: "thinner" },
  spacing: { more: "wider-apart", less: "closer" },
  arch: { more: "higher-arch", less: "flatter-arch" },
} as const satisfies Record<string, { more: WishName; less: WishName }>;

export type WishPair = keyof typeof WISH_PAIRS;

/** Millimetres of each, positive for more. */
export type Wishes = { readonly [Pair in WishPair]?: number };

export const WISH_NAMES = Object.keys(WISH_PAIRS) as readonly WishPair[];

/** The wishes as the library takes them. */
export function wishesOf(wishes: Wishes): readonly Wish[] {
  return WISH_NAMES.flatMap((pair): readonly Wish[] => {
    const by = wishes[pair] ?? 0;
    if (by === 0) return [];
    const { more, less } = WISH_PAIRS[pair];
    return [{ wish: by > 0 ? more : less, amount: mm(Math.abs(by)), by: text.value.theClient }];
  });
}
