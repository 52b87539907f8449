import type { Dot } from "../../landmarks/index.js";
import { placeOnSide, type SidePlace } from "../../symmetry/index.js";
import { eachSide, type Length, otherSide, type Side, type Sides } from "../../units/index.js";
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
}

/** Who is followed across the face, and who in height. */
export interface Followed {
  readonly across: Lead;
  readonly inHeight: Lead;
  /** How far a dot may leave the height that its own side asks for; without it, as far as it takes. */
  readonly limit?: Length<"mm">;
}

/** A pinned side keeps its pin and the other mirrors it; without pins both take the place of the one that leads. */
export function settleDot(
  dot: Dot,
  own: (side: Side) => SidePlace,
  followed: Followed,
  pins: readonly Pin[],
): Sides<LedDot> {
  if (!pins.some((pin) => pin.dot === dot)) {
    const places = eachSide(own);
    const led = (lead: Lead, of: keyof SidePlace): number =>
      ledBy(
        lead,
        eachSide((side) => places[side][of]),
      );
    const distance = led(followed.across, "distance");
    const height = led(followed.inHeight, "height");
    return eachSide((side) => ({
      distance,
      height: heldNear(places[side].height, height, followed.limit),
      origin: { from: ledFrom(followed.across, side) },
      own: places[side],
    }));
  }
  const pinned = eachSide((side) => pins.find((pin) => pin.side === side && pin.dot === dot));
  return eachSide((side) => {
    const pin = pinned[side];
    if (pin !== undefined) return settledAt(placeOnSide(pin.at, side), { from: "pinned", pin });
    const across = pinned[otherSide(side)] as Pin;
    return settledAt(placeOnSide(across.at, across.side), { from: "mirrored" });
  });
}

function heldNear(own: number, aim: number, limit: number = Infinity): number {
  return Math.min(Math.max(aim, own - limit), own + limit);
}

function settledAt(place: SidePlace, origin: DotOrigin): LedDot {
  return { ...place, origin, own: place };
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
