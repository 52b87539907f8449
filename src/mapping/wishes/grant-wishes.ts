import { length, type Length, type Note } from "../../units/index.js";
import {
  keysOf,
  refuse,
  refusingAs,
  requireNames,
  requireWithin,
  requireWord,
  SIDES,
} from "../../units/internal.js";
import type { Choices } from "../choices/choices.js";
import { planAcross, readFace } from "../dots/plan-dots.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { ShapeLimits } from "../shape/shape-limits.js";
import { type WishCode, type WishLimitCode, wishNote } from "./notes.js";
import { atPin, obstacleOf } from "./obstacle-of.js";
import { isFor, ruleOf, type Wish } from "./wish.js";
import { WISHES } from "./wish-tables.js";
import { type Before, type WishAmount, wishedChoices } from "./wished-choices.js";

/** How much of a wish can be drawn. */
export interface GrantedWish {
  readonly wish: Wish;
  /** From 0 to the amount that was wished for; whole tenths of a millimetre where less than that. */
  readonly granted: Length<"mm">;
  /** That it was granted, or what stands in the way of more. */
  readonly note: Note<WishCode>;
}

/** Wishes as choices, of which a plan is made. */
export interface GrantedWishes {
  /** The choices that were given, and pins for every dot that a wish moves. */
  readonly choices: Choices;
  /** In the order of the wishes. */
  readonly grants: readonly GrantedWish[];
}

/** What {@link grantWishes} is to keep to. */
export interface WishOptions {
  /** Limits of `shapeFindings` that are to be others. */
  readonly shapeLimits?: Partial<ShapeLimits>;
}

/** The greatest amount of one wish, in mm; ours. */
const MOST = 20;

/** What is granted of a wish comes in such parts of a millimetre: hands do not draw finer. */
const PARTS = 10;

/**
 * Turns wishes into choices: each as far as it is wished, or as far as the guides, the space over the lid
 * and the limits of a brow's shape let it go, one after another in the order given. A wish for both brows
 * moves both by as much.
 *
 * No brow gets thinner than 2 mm. Starts and tail ends stay between the outermost of their guides and the hair, and a tail does not end
 * before the outer corner of the eye (trade practice, no source). A dot that the artist has pinned does not move. What already asked
 * for a second look before the wish may stay so, but not get worse.
 *
 * Lifting and lowering move the whole brow, longer and shorter the tail end along the tail, fuller and
 * thinner the lower border, closer and wider apart the start, and a higher or flatter arch its dot. No limit
 * but these is known here: what suits a face is between the client and the artist.
 *
 * @throws GeometryError as `planDots` for a face that cannot be planned before any wish; `out-of-range` for
 * a wish of another name or an amount outside of 0…20 mm; `inconsistent` for two wishes of one kind on a brow
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace } from "brow-geometry";
 * import { grantWishes } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 50, 23]), mm([sign * 57, 18])] },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const guided = { keepHair: mm(0) };
 * const { choices, grants } = grantWishes(
 *   face,
 *   [{ wish: "lift", amount: mm(1) }, { wish: "closer", amount: mm(4) }],
 *   guided,
 * );
 * grants.map(({ granted }) => granted); // → [1, 2]
 * grants[1]?.note.code; // → "wish-held"
 * planDots(face, guided).dots.left.upperStart; // → [17, 20.6]
 * planDots(face, choices).dots.left.upperStart; // → [15, 21.6]
 * ```
 */
export function grantWishes(
  face: PlannableFace,
  wishes: readonly Wish[],
  choices: Choices = {},
  options: WishOptions = {},
): GrantedWishes {
  return refusingAs("grantWishes", () => {
    requireNames("options", options, ["shapeLimits"]);
    const { shapeLimits } = options;
    requireWishes(wishes);
    const read = readFace(face);
    const before: Before = {
      read,
      choices,
      plan: planAcross(0, read, choices),
      ...(shapeLimits === undefined ? {} : { shapeLimits }),
    };
    const grants: GrantedWish[] = [];
    for (const wish of wishes) grants.push(grant(wish, grants, before));
    return { choices: wishedChoices(before, grants), grants };
  });
}

function grant(wish: Wish, earlier: readonly WishAmount[], before: Before): GrantedWish {
  const { wish: name, amount } = wish;
  const obstacle = (granted: Length<"mm">): Note<WishLimitCode> | undefined =>
    obstacleOf([...earlier, { wish, granted }], before);
  const held = (granted: Length<"mm">, why: Note<WishLimitCode>): GrantedWish => ({
    wish,
    granted,
    note: wishNote("wish-held", { wish: name, amount, granted, why }),
  });
  const pinned = amount === 0 ? undefined : atPin(wish, before);
  if (pinned !== undefined) return held(length(0), pinned);
  let why = amount === 0 ? undefined : obstacle(amount);
  if (why === undefined) {
    return { wish, granted: amount, note: wishNote("wish-granted", { wish: name, amount }) };
  }
  let steps = 0;
  for (let beyond = Math.ceil(amount * PARTS); beyond - steps > 1;) {
    const middle = Math.floor((steps + beyond) / 2);
    const found = obstacle(length(middle / PARTS));
    if (found === undefined) steps = middle;
    else [beyond, why] = [middle, found];
  }
  return held(length(steps / PARTS), why);
}

function requireWishes(wishes: readonly Wish[]): void {
  const given: unknown = wishes;
  if (!Array.isArray(given)) refuse("not-parsed", "wishes", given, "a list of wishes");
  wishes.forEach((one, index) => {
    const field = `wishes[${index}]`;
    requireWord(`${field}.wish`, one.wish, keysOf(WISHES));
    requireWithin(`${field}.amount`, one.amount, 0, MOST);
    requireWord(`${field}.side`, one.side, SIDES);
    const earlier = wishes
      .slice(0, index)
      .find(
        (other) =>
          ruleOf(other) === ruleOf(one) &&
          SIDES.some((side) => isFor(one, side) && isFor(other, side)),
      );
    if (earlier === undefined) return;
    const need = `one wish of its kind for each brow: "${earlier.wish}" is of the same`;
    refuse("inconsistent", `${field}.wish`, one.wish, need);
  });
}
