import type { Dot } from "../../landmarks/index.js";
import { placeOnSide, type SidePlace } from "../../symmetry/index.js";
import { eachSide, otherSide, type Side, type Sides } from "../../units/index.js";
import { type Lead, ledBy } from "../choices/choice-tables.js";
import type { Pin } from "../choices/choices.js";
import type { DotOrigin } from "./planned-dots.js";

/** A dot's place on one side, and whose it is. */
export interface SettledDot extends SidePlace {
  readonly origin: DotOrigin;
}

/** A settled dot that knows what was asked for on its own side. */
export interface LedDot extends SettledDot {
  /** Where this side's hair would have it; the place itself where a pin has settled it. */
  readonly own: SidePlace;
  /** How high it would be settled farther in or out. */
  readonly heightAt: (distance: number) => number;
}

/** A pinned side keeps its pin and the other mirrors it; without pins both take the place of the one that leads. */
export function settleDot(
  dot: Dot,
  own: (side: Side) => SidePlace,
  across: Lead,
  inHeight: Lead,
  pins: readonly Pin[],
  held: Held,
): Sides<LedDot> {
  if (!pins.some((pin) => pin.dot === dot)) {
    const places = eachSide(own);
    const led = (lead: Lead, of: keyof SidePlace): number =>
      ledBy(
        lead,
        eachSide((side) => places[side][of]),
      );
    const distance = led(across, "distance");
    const height = led(inHeight, "height");
    return eachSide((side) => {
      const heightAt = (at: number): number => held(height, side, at);
      const origin: DotOrigin = { from: ledFrom(across, side) };
      return { distance, height: heightAt(distance), origin, own: places[side], heightAt };
    });
  }
  const pinned = eachSide((side) => pins.find((pin) => pin.side === side && pin.dot === dot));
  return eachSide((side) => {
    const pin = pinned[side];
    if (pin !== undefined) return settledAt(placeOnSide(pin.at, side), { from: "pinned", pin });
    const across = pinned[otherSide(side)] as Pin;
    return settledAt(placeOnSide(across.at, across.side), { from: "mirrored" });
  });
}

/** The height that a dot of a side takes instead of one that it is to have, at a distance from the midline. */
type Held = (aim: number, side: Side, distance: number) => number;

/**
 * Takes no dot from the hair in the same place by more than a limit: half-way, both sides as even as that allows.
 *
 * @param hair how high hair grows; a side without follows the other one
 */
export function heldNear(
  hair: (side: Side, distance: number) => number | undefined,
  limit: number | undefined,
  inHeight: Lead,
): Held {
  if (limit === undefined) return (aim) => aim;
  const near = (height: number, grown: number): number =>
    Math.min(Math.max(height, grown - limit), grown + limit);
  return (aim, side, distance) => {
    const other = hair(otherSide(side), distance);
    const own = hair(side, distance) ?? other ?? aim;
    const held = near(aim, own);
    // To and fro between the sides they come together, where both may.
    return inHeight === "middle" ? near(near(held, other ?? own), own) : held;
  };
}

function settledAt(place: SidePlace, origin: DotOrigin): LedDot {
  return { ...place, origin, own: place, heightAt: () => place.height };
}

function ledFrom(lead: Lead, side: Side): DotOrigin["from"] {
  if (lead === "middle") return "both";
  return lead === side ? "own" : "mirrored";
}

/** A value for every dot, made by the same rule. */
export function overDots<Value>(make: (dot: Dot) => Value): { readonly [Name in Dot]: Value } {
  return {
    upperStart: make("upperStart"),
    upperBody: make("upperBody"),
    upperArch: make("upperArch"),
    tailEnd: make("tailEnd"),
    lowerStart: make("lowerStart"),
    lowerBody: make("lowerBody"),
    lowerArch: make("lowerArch"),
  };
}
