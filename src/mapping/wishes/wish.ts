import type { Length, Side } from "../../units/index.js";
import { WISH_AXES, type WishAxis, type WishName, WISHES } from "./wish-tables.js";

/** Something that a client would like to be otherwise than it was planned. */
export interface Wish {
  readonly wish: WishName;
  /** How much of it, 0 to 20 mm. */
  readonly amount: Length<"mm">;
  /** The brow that it is for; without it, both. */
  readonly side?: Side;
  /** Whose wish it is: kept with the pins that it makes, which are the artist's where nothing is said. */
  readonly by?: string;
  /** Why, in their words. */
  readonly reason?: string;
}

/** What a wish moves, and which way where there is to be more. */
export function ruleOf({ wish }: Wish): WishAxis {
  return WISH_AXES[WISHES[wish][0]];
}

/** Whether a wish is for a brow. */
export function isFor({ side: asked }: Wish, side: Side): boolean {
  return asked === undefined || asked === side;
}
