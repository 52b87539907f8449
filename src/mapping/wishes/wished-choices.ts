import { distance } from "../../geometry/index.js";
import type { CompleteDots, Dot } from "../../landmarks/index.js";
import { flatPoint, type Length, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { Choices, Pin } from "../choices/choices.js";
import { planAcross } from "../dots/plan-dots.js";
import type { FaceRead, PlannedDots } from "../dots/planned-dots.js";
import type { ShapeLimits } from "../shape/shape-limits.js";
import { isFor, ruleOf, type Wish } from "./wish.js";
import { WISH_AXES, WISHES } from "./wish-tables.js";

/** What stands before any wish. */
export interface Before {
  readonly read: FaceRead;
  readonly choices: Choices;
  readonly plan: PlannedDots;
  readonly shapeLimits?: Partial<ShapeLimits>;
}

/** How much is drawn of a wish. */
export interface WishAmount {
  readonly wish: Wish;
  readonly granted: Length<"mm">;
}

/** The choices that draw what is granted: every dot that moves is pinned on both sides, so that neither follows. */
export function wishedChoices(
  { read, choices, plan }: Before,
  amounts: readonly WishAmount[],
): Choices {
  const hangs = ({ wish }: WishAmount): boolean => ruleOf(wish).way === "down";
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

function withPinned(
  choices: Choices,
  { dots }: PlannedDots,
  amounts: readonly WishAmount[],
): Choices {
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
