import { distance } from "../../geometry/index.js";
import type { CompleteDots, Dot } from "../../landmarks/index.js";
import {
  flatPoint,
  GeometryError,
  length,
  type Length,
  type Note,
  type Side,
} from "../../units/index.js";
import {
  keysOf,
  refuse,
  refusingAs,
  requireWithin,
  requireWord,
  SIDES,
} from "../../units/internal.js";
import { STATIONS } from "../../proportions/internal.js";
import type { Choices, Pin } from "../choices/choices.js";
import { planAcross, readFace } from "../dots/plan-dots.js";
import type { FaceRead, PlannedDots } from "../dots/planned-dots.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import { type ShapeFinding, shapeFindings } from "../shape/shape-findings.js";
import type { ShapeLimits } from "../shape/shape-limits.js";
import { whyNot } from "../weighing/why-not.js";
import { beyondGuides } from "./beyond-guides.js";
import { type WishCode, type WishLimitCode, wishNote } from "./notes.js";
import { WISH_AXES, type WishAxis, type WishName, WISHES } from "./wish-tables.js";

/** Something that a client would like to be otherwise than it was planned. */
export interface Wish {
  readonly wish: WishName;
  /** How much of it, 0 to 20 mm. */
  readonly amount: Length<"mm">;
  /** The brow that it is for; without it, both. */
  readonly side?: Side;
  /** Whose wish it is: kept with the pins that it makes. */
  readonly by?: string;
  /** Why, in their words. */
  readonly reason?: string;
}

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

/** No wish makes a brow thinner than this, in mm; ours. */
const LEAST_THICKNESS = 2;

/**
 * Turns wishes into choices: each as far as it is wished, or as far as the guides, the space over the lid
 * and the limits of a brow's shape let it go, one after another in the order given. A wish for both brows
 * moves both by as much.
 *
 * No brow gets thinner than 2 mm. Starts and tail ends stay between the outermost of their guides and the hair, and a tail does not end
 * before the outer corner of the eye. A dot that the artist has pinned does not move. What already asked
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
  { shapeLimits }: WishOptions = {},
): GrantedWishes {
  return refusingAs("grantWishes", () => {
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
    return { choices: wished(before, grants), grants };
  });
}

/** What stands before any wish. */
interface Before {
  readonly read: FaceRead;
  readonly choices: Choices;
  readonly plan: PlannedDots;
  readonly shapeLimits?: Partial<ShapeLimits>;
}

type Amount = Pick<GrantedWish, "wish" | "granted">;

function grant(wish: Wish, earlier: readonly Amount[], before: Before): GrantedWish {
  const { wish: name, amount } = wish;
  const obstacle = (granted: Length<"mm">): Note<WishLimitCode> | undefined =>
    obstacleOf([...earlier, { wish, granted }], before);
  const whole = amount === 0 ? undefined : (atPin(wish, before) ?? obstacle(amount));
  if (whole === undefined) {
    return { wish, granted: amount, note: wishNote("wish-granted", { wish: name, amount }) };
  }
  let steps = 0;
  let why = whole;
  for (let beyond = Math.ceil(amount * PARTS); beyond - steps > 1;) {
    const middle = Math.floor((steps + beyond) / 2);
    const found = atPin(wish, before) ?? obstacle(length(middle / PARTS));
    if (found === undefined) steps = middle;
    else [beyond, why] = [middle, found];
  }
  const granted = length<"mm">(steps / PARTS);
  return { wish, granted, note: wishNote("wish-held", { wish: name, amount, granted, why }) };
}

/** What amounts come up against: an outline that cannot be, a shape to look at twice, guides. */
function obstacleOf(amounts: readonly Amount[], before: Before): Note<WishLimitCode> | undefined {
  let plan: PlannedDots;
  try {
    plan = planAcross(0, before.read, wished(before, amounts));
  } catch (error) {
    if (error instanceof GeometryError) return whyNot(error);
    throw error;
  }
  const { shapeLimits } = before;
  const known = shapeFindings(before.plan, shapeLimits);
  const worse = shapeFindings(plan, shapeLimits).find((found) =>
    known.every((one) => !isSame(one, found) || valueOf(found) > valueOf(one) + ROUNDING),
  );
  if (worse !== undefined) return { code: worse.code, values: worse.values };
  return tooThin(plan, before.plan) ?? beyondGuides(plan, before.plan);
}

/** A station that a wish made thinner than brows are drawn. */
function tooThin(plan: PlannedDots, before: PlannedDots): Note<WishLimitCode> | undefined {
  for (const side of SIDES) {
    for (const station of keysOf(STATIONS)) {
      const { upper, lower } = STATIONS[station];
      const thickness = ({ dots }: PlannedDots): number =>
        dots[side][upper][1] - dots[side][lower][1];
      const [now, was] = [thickness(plan), thickness(before)];
      if (now >= Math.min(was, LEAST_THICKNESS) - ROUNDING) continue;
      return wishNote("wish-thin", { side, station, limit: LEAST_THICKNESS });
    }
  }
  return undefined;
}

/** Whether two findings are of the same in the same place. */
function isSame(one: ShapeFinding, other: ShapeFinding): boolean {
  const names = ["side", "dot", "station"];
  return one.code === other.code && names.every((name) => one.values[name] === other.values[name]);
}

function valueOf({ values }: ShapeFinding): number {
  return Number(values["value"]);
}

/** What adding and subtracting coordinates may cost, in mm and degrees. */
const ROUNDING = 1e-9;

/** A pinned dot that a wish would move. */
function atPin(wish: Wish, { choices }: Before): Note<WishLimitCode> | undefined {
  const { dots } = ruleOf(wish);
  const pin = choices.pins?.find(
    (one) => isFor(wish, one.side) && dots.some((dot) => dot === one.dot),
  );
  return pin && wishNote("wish-at-pin", { side: pin.side, dot: pin.dot });
}

/** The choices that draw what is granted: every dot that moves is pinned on both sides, so that neither follows. */
function wished({ read, choices, plan }: Before, amounts: readonly Amount[]): Choices {
  const hangs = ({ wish }: Amount): boolean => ruleOf(wish).way === "down";
  const moving = amounts.filter(({ granted }) => granted > 0);
  const upper = withPinned(
    choices,
    plan,
    moving.filter((amount) => !hangs(amount)),
  );
  const lower = moving.filter(hangs);
  // Lower dots hang below upper ones, which must have moved first.
  return lower.length === 0 ? upper : withPinned(upper, planAcross(0, read, upper), lower);
}

function withPinned(choices: Choices, { dots }: PlannedDots, amounts: readonly Amount[]): Choices {
  if (amounts.length === 0) return choices;
  const { pins = [] } = choices;
  const pinOf = (side: Side, dot: Dot): Pin => {
    const moved = amounts.filter(
      ({ wish }) => isFor(wish, side) && ruleOf(wish).dots.some((name) => name === dot),
    );
    const steps = moved.map(({ wish, granted }) => {
      const [x, y] = wayOf(wish, dots[side], side);
      return [x * granted, y * granted] as const;
    });
    const sum = (of: 0 | 1): number =>
      steps.reduce((total, step) => total + step[of], dots[side][dot][of]);
    const { by, reason } = moved.find(({ wish }) => wish.by ?? wish.reason)?.wish ?? {};
    return {
      side,
      dot,
      at: flatPoint(sum(0), sum(1)),
      ...(by === undefined ? {} : { by }),
      ...(reason === undefined ? {} : { reason }),
    };
  };
  const moving = new Set(amounts.flatMap(({ wish }): readonly Dot[] => ruleOf(wish).dots));
  const isPinned = (side: Side, dot: Dot): boolean =>
    pins.some((pin) => pin.side === side && pin.dot === dot);
  const more = [...moving].flatMap((dot) =>
    SIDES.filter((side) => !isPinned(side, dot)).map((side) => pinOf(side, dot)),
  );
  return { ...choices, pins: [...pins, ...more] };
}

/** The way of a dot, on one side, for 1 mm of a wish. */
function wayOf(
  { wish }: Wish,
  { upperArch, tailEnd }: CompleteDots<"mm">,
  side: Side,
): readonly [x: number, y: number] {
  const [axis, sign] = WISHES[wish];
  const outwards = side === "left" ? sign : -sign;
  switch (WISH_AXES[axis].way) {
    case "up":
      return [0, sign];
    case "down":
      return [0, -sign];
    case "outward":
      return [outwards, 0];
    case "along": {
      const long = distance(upperArch, tailEnd);
      return [
        sign * ((tailEnd[0] - upperArch[0]) / long),
        sign * ((tailEnd[1] - upperArch[1]) / long),
      ];
    }
  }
}

function ruleOf({ wish }: Wish): WishAxis {
  return WISH_AXES[WISHES[wish][0]];
}

function isFor({ side: asked }: Wish, side: Side): boolean {
  return asked === undefined || asked === side;
}

function requireWishes(wishes: readonly Wish[]): void {
  wishes.forEach((one, index) => {
    const field = `wishes[${index}]`;
    requireWord("grantWishes", `${field}.wish`, one.wish, keysOf(WISHES));
    requireWithin("grantWishes", `${field}.amount`, one.amount, 0, MOST);
    requireWord("grantWishes", `${field}.side`, one.side, SIDES);
    const earlier = wishes
      .slice(0, index)
      .find(
        (other) =>
          ruleOf(other) === ruleOf(one) &&
          SIDES.some((side) => isFor(one, side) && isFor(other, side)),
      );
    if (earlier === undefined) return;
    const need = `one wish of its kind for each brow: "${earlier.wish}" is of the same`;
    refuse("inconsistent", "grantWishes", `${field}.wish`, one.wish, need);
  });
}
