import type { CompleteMarks, Dot, Skin } from "../../landmarks/index.js";
import { carryBrow, placeOnSide, pointOnSide } from "../../symmetry/index.js";
import { type Note, otherSide, type Point, type Side, type Sides } from "../../units/index.js";
import type { DotOrigin, SettledChoices } from "./mark-plan.js";
import { reason, type ReasonCode } from "./reasons.js";

/** Dots with who put them where they are. */
export interface OriginatedMarks {
  readonly marks: Sides<CompleteMarks<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
}

/**
 * Gives the brow that follows its own start and the leading ruler lengths, where that was chosen;
 * pinned dots stay.
 *
 * @param ownStart how far from the midline a side's own start lies
 */
export function carryByMeasure(
  even: OriginatedMarks,
  ownStart: (side: Side) => number,
  skin: Skin,
  { carry, lead }: SettledChoices,
): OriginatedMarks {
  if (carry === "mirror" || lead === "middle") return even;
  const { marks, origins } = even;
  const side = otherSide(lead);
  const isPinned = (dot: Dot): boolean => origins[side][dot].from === "pinned";
  const start = isPinned("upperStart")
    ? marks[side].upperStart
    : pointOnSide(
        { distance: ownStart(side), height: placeOnSide(marks[lead].upperStart, lead).height },
        side,
      );
  const carried = carryBrow(
    { side: lead, marks: marks[lead] },
    { method: "measure", start, skin },
  ).marks;
  const dots = Object.keys(carried) as Dot[];
  const pick = <Value>(make: (dot: Dot) => Value): { readonly [Name in Dot]: Value } =>
    Object.fromEntries(dots.map((dot) => [dot, make(dot)])) as { [Name in Dot]: Value };
  return {
    marks: {
      ...marks,
      [side]: pick((dot): Point<"mm"> => (isPinned(dot) ? marks[side][dot] : carried[dot])),
    },
    origins: {
      ...origins,
      [side]: pick((dot): DotOrigin =>
        isPinned(dot) ? origins[side][dot] : { from: dot === "upperStart" ? "own" : "measured" },
      ),
    },
  };
}

/** By how much a brow that was carried by measure lies elsewhere than the leading one mirrored. */
export function carryReasons(
  marks: Sides<CompleteMarks<"mm">>,
  { carry, lead }: SettledChoices,
): readonly Note<ReasonCode>[] {
  if (carry === "mirror" || lead === "middle") return [];
  const side = otherSide(lead);
  const fartherOut = (dot: Dot): number =>
    placeOnSide(marks[side][dot], side).distance - placeOnSide(marks[lead][dot], lead).distance;
  return [
    reason("carried-by-measure", {
      side,
      arch: fartherOut("upperArch"),
      tail: fartherOut("tailEnd"),
    }),
  ];
}
