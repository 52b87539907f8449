import { distance } from "../../geometry/index.js";
import {
  attempt,
  flatPoint,
  type FlatPoint,
  type GeometryError,
  type GeometryErrorCode,
  type Length,
  length,
} from "../../units/index.js";
import { refusingAs, toRadians } from "../../units/internal.js";
import type { Choices, Pin } from "../choices/choices.js";
import type { BrowPlan } from "./plan.js";
import { planAcross, readFace } from "../dots/plan-dots.js";
import type { PlannedDots } from "../dots/planned-dots.js";

/** Where a dot may stand that somebody wants to have at a place. */
export interface AllowedPin {
  /** To be planned with: at the place itself, or as near to it as a brow can be. */
  readonly pin: Pin;
  /** How far from the place that was asked for, in mm: 0 where it is allowed. */
  readonly off: Length<"mm">;
  /** Why not at the place itself; absent where it is allowed. */
  readonly refusal?: GeometryError;
}

/** Refusals that say of a place that no brow has its dot there. */
const NO_PLACE: readonly GeometryErrorCode[] = ["contradicting-pins", "no-solution"];

/**
 * The nearest place to one that a finger asks for at which a dot can be pinned, and why not at that itself: a
 * dot that is dragged too far stops there instead of ending in an error.
 *
 * The place is looked for from where the plan has the dot, on the way to the one asked for, then along what
 * stopped it, then around the place itself: it lies within a millimetre or so of the nearest.
 *
 * @param plan the plan on which the dot was seen
 * @param choices those of that plan; a pin that they hold on the same dot gives way
 * @throws GeometryError as `planDots`, where the choices allow no brow even with the dot where it stands
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { allowedPin } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * allowedPin(plan, {}, { side: "left", dot: "upperArch", at: mm([40, 28]) }).off; // → 0
 * const far = allowedPin(plan, {}, { side: "left", dot: "upperArch", at: mm([80, 28]) });
 * far.refusal?.code; // → "contradicting-pins"
 * far.pin.at; // → [56.99, 28.0]
 * ```
 */
export function allowedPin(plan: BrowPlan, choices: Choices, pin: Pin): AllowedPin {
  return refusingAs("allowedPin", () => {
    const read = readFace(plan.face);
    const { side, dot } = pin;
    const others = (choices.pins ?? []).filter((one) => one.side !== side || one.dot !== dot);
    const planned = (at: Pin["at"]): PlannedDots =>
      planAcross(plan.frame?.midline.tiltU ?? 0, read, {
        ...choices,
        pins: [...others, { ...pin, at }],
      });
    const asked = attempt(() => planned(pin.at), NO_PLACE);
    if (asked.ok) return { pin, off: length(0) };
    const wanted = flatPoint<"mm">(pin.at[0], pin.at[1]);
    const [x, y] = plan.dots[side][dot];
    const from = flatPoint<"mm">(x, y);
    planned(from);
    const at = nearest(wanted, from, (place) => attempt(() => planned(place), NO_PLACE).ok);
    return { pin: { ...pin, at }, off: distance(at, wanted), refusal: asked.refusal };
  });
}

/** How near a place is looked for, in mm: finer than a pen. */
const NEAR = 0.05;

/** How far to the sides it is looked for first, in mm. */
const FAR = 2;

/** The place nearest to one that is asked for, of those that are allowed, looked for from a first one on. */
function nearest(
  wanted: FlatPoint<"mm">,
  first: FlatPoint<"mm">,
  isAllowed: (place: FlatPoint<"mm">) => boolean,
): FlatPoint<"mm"> {
  let at = farthest(first, wanted, isAllowed);
  for (let step = FAR; step > NEAR;) {
    const off = distance(at, wanted);
    const next = around(at, step)
      .filter((place) => distance(place, wanted) < off)
      .sort((one, other) => distance(one, wanted) - distance(other, wanted))
      .find(isAllowed);
    if (next === undefined) step /= 2;
    else at = farthest(next, wanted, isAllowed);
  }
  // Nearer places that what stopped the dot hides from where it stands.
  const off = distance(at, wanted);
  if (off <= NEAR) return at;
  const hidden = SHARES.flatMap((share) => around(wanted, share * off)).find(isAllowed);
  return hidden === undefined ? at : nearest(wanted, hidden, isAllowed);
}

const SHARES = [0.25, 0.5, 0.75];

/** The last place on the way from an allowed one to another. */
function farthest(
  from: FlatPoint<"mm">,
  to: FlatPoint<"mm">,
  isAllowed: (place: FlatPoint<"mm">) => boolean,
): FlatPoint<"mm"> {
  const [x, y] = from;
  const at = (share: number): FlatPoint<"mm"> =>
    flatPoint(x + share * (to[0] - x), y + share * (to[1] - y));
  let [allowed, refused] = [0, 1];
  while ((refused - allowed) * distance(from, to) > NEAR) {
    const middle = (allowed + refused) / 2;
    if (isAllowed(at(middle))) allowed = middle;
    else refused = middle;
  }
  return at(allowed);
}

/** Places all around one, at a distance. */
function around([x, y]: FlatPoint<"mm">, by: number): readonly FlatPoint<"mm">[] {
  return WAYS.map(([across, up]) => flatPoint(x + by * across, y + by * up));
}

const WAYS = [0, 45, 90, 135, 180, 225, 270, 315].map((degrees) => {
  const angle = toRadians(degrees);
  return [Math.cos(angle), Math.sin(angle)] as const;
});
