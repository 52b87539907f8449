import type { Dot } from "../../landmarks/index.js";
import type { UpperDots } from "../../proportions/index.js";
import { bodyOf } from "../../proportions/internal.js";
import { placeOnSide, pointOnSide } from "../../symmetry/index.js";
import { eachSide, otherSide, type Side, type Sides } from "../../units/index.js";
import type { Pin } from "../choices/choices.js";
import { requireDotsInOrder } from "../choices/dots-in-order.js";
import type { DotOrigin, SettledChoices } from "./planned-dots.js";
import type { SettledDot } from "./settle-dot.js";

/** The dots of the upper border above the body: half-way, sideways, on the border that is drawn. */
export function bodyDot(
  upper: Readonly<Record<keyof UpperDots, Sides<SettledDot>>>,
  { pins, levelLimit, shape }: SettledChoices,
): Sides<SettledDot> {
  const bodyOn = (side: Side): SettledDot => {
    const pinned = pinnedDot("upperBody", side, pins);
    if (pinned !== undefined) return pinned;
    const mirrored = pinnedDot("upperBody", otherSide(side), pins);
    if (mirrored !== undefined) return { ...mirrored, origin: { from: "mirrored" } };
    const dots: UpperDots = {
      upperStart: pointOnSide(upper.upperStart[side], side),
      upperArch: pointOnSide(upper.upperArch[side], side),
      tailEnd: pointOnSide(upper.tailEnd[side], side),
    };
    requireDotsInOrder(dots, side, pins);
    const { distance, height } = placeOnSide(bodyOf(dots, shape), side);
    return { distance, height, origin: withoutPin(upper.upperArch[side].origin) };
  };
  const right = bodyOn("right");
  // Without either, the sides mirror each other: what is drawn through their dots does then, too.
  if (pins.length > 0 || levelLimit !== undefined) return { right, left: bodyOn("left") };
  return { right, left: { ...right, origin: upper.upperArch.left.origin } };
}

/**
 * Lower dots, both sides equally thick: a pinned one gives its thickness to the other side too, and how far
 * it lies aside from its upper one.
 */
export function lowerDot(
  dot: Dot,
  uppers: Sides<SettledDot>,
  thickness: number,
  pins: readonly Pin[],
): Sides<SettledDot> {
  return eachSide((side) => {
    const pinned = pinnedDot(dot, side, pins);
    if (pinned !== undefined) return pinned;
    const upper = uppers[side];
    const across = pinnedDot(dot, otherSide(side), pins);
    if (across === undefined) {
      return {
        distance: upper.distance,
        height: upper.height - thickness,
        origin: withoutPin(upper.origin),
      };
    }
    const over = uppers[otherSide(side)];
    return {
      distance: upper.distance + across.distance - over.distance,
      height: upper.height + across.height - over.height,
      origin: { from: "mirrored" },
    };
  });
}

function pinnedDot(dot: Dot, side: Side, pins: readonly Pin[]): SettledDot | undefined {
  const pin = pins.find((one) => one.side === side && one.dot === dot);
  return pin && { ...placeOnSide(pin.at, side), origin: { from: "pinned", pin } };
}

/** A dot under a pinned one follows its own side. */
function withoutPin(origin: DotOrigin): DotOrigin {
  return origin.from === "pinned" ? { from: "own" } : origin;
}
