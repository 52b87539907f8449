import type { CompleteDots, Dot, Skin } from "../../landmarks/index.js";
import { placeOnSide, pointOnSide } from "../../symmetry/index.js";
import { carryByRuler } from "../../symmetry/internal.js";
import { type Note, otherSide, type Point, type Side, type Sides } from "../../units/index.js";
import type { DotOrigin, SettledChoices } from "./planned-dots.js";
import { overDots } from "./settle-dot.js";
import { reason, type ReasonCode } from "./notes.js";

/** Dots with who put them where they are. */
export interface OriginatedDots {
  readonly dots: Sides<CompleteDots<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
}

/**
 * Gives the brow that follows its own start and the leading ruler lengths, where that was chosen;
 * pinned dots stay.
 *
 * @param ownStart how far from the midline a side's own start lies
 */
export function carryByMeasure(
  even: OriginatedDots,
  ownStart: (side: Side) => number,
  skin: Skin,
  { carry, lead }: SettledChoices,
): OriginatedDots {
  if (carry === "mirror" || lead === "middle") return even;
  const { dots, origins } = even;
  const side = otherSide(lead);
  const isPinned = (dot: Dot): boolean => origins[side][dot].from === "pinned";
  const start = isPinned("upperStart")
    ? dots[side].upperStart
    : pointOnSide(
        { distance: ownStart(side), height: placeOnSide(dots[lead].upperStart, lead).height },
        side,
      );
  const carried = carryByRuler({ side: lead, dots: dots[lead] }, start, skin);
  return {
    dots: {
      ...dots,
      [side]: overDots((dot): Point<"mm"> =>
        isPinned(dot) ? dots[side][dot] : carried(dots[lead][dot]),
      ),
    },
    origins: {
      ...origins,
      [side]: overDots((dot): DotOrigin =>
        isPinned(dot) ? origins[side][dot] : { from: dot === "upperStart" ? "own" : "measured" },
      ),
    },
  };
}

/** By how much a brow that was carried by measure lies elsewhere than the leading one mirrored. */
export function carryReasons(
  dots: Sides<CompleteDots<"mm">>,
  { carry, lead }: SettledChoices,
): readonly Note<ReasonCode>[] {
  if (carry === "mirror" || lead === "middle") return [];
  const side = otherSide(lead);
  const fartherOut = (dot: Dot): number =>
    placeOnSide(dots[side][dot], side).distance - placeOnSide(dots[lead][dot], lead).distance;
  return [
    reason("carried-by-measure", {
      side,
      arch: fartherOut("upperArch"),
      tail: fartherOut("tailEnd"),
    }),
  ];
}
