import { intersect, lineAlong } from "../../geometry/index.js";
import { heightOver } from "../../geometry/internal.js";
import {
  type BrowArch,
  type CompleteDots,
  type Dot,
  type GuideConvention,
  type Mark,
  type Skin,
} from "../../landmarks/index.js";
import { isGuide } from "../../landmarks/internal.js";
import {
  archAtShare,
  type Guide,
  guideLine,
  meetGuide,
  type NaturalArch,
  type NaturalDots,
} from "../../proportions/index.js";
import { requireGuideLandmarks } from "../../proportions/internal.js";
import { placeOnSide, pointOnSide, type SidePlace } from "../../symmetry/index.js";
import {
  eachSide,
  type FlatPoint,
  flatPoint,
  length,
  otherSide,
  type Side,
  type Sides,
} from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { type ArchLimit, archLimits, LIMBUS_SHARE } from "./arch-limits.js";
import { carryByMeasure } from "./carry-by-measure.js";
import { evenShare } from "./even-share.js";
import { bodyDot, lowerDot } from "./lower-dots.js";
import { TAIL_HEIGHTS } from "../choices/choice-tables.js";
import type { DotOrigin, SettledChoices } from "./planned-dots.js";
import type { PlannableFace } from "./plannable-face.js";
import { overDots, type SettledDot, settleDot } from "./settle-dot.js";

/** Where a guide did not meet the hair itself. */
export interface BorderEvent {
  readonly code: "border-extended" | "guide-missed";
  readonly side: Side;
  readonly mark: Mark;
}

/** The dots that follow from a face and settled choices, and how they came about. */
export interface Solution {
  readonly dots: Sides<CompleteDots<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
  readonly guides: Sides<readonly Guide[]>;
  readonly events: readonly BorderEvent[];
}

/**
 * Solves the dots of both brows: starts, tail ends, arches, then what hangs below them. Nothing is
 * decided here that is not in `choices`, so small changes of the face make small changes of the dots.
 */
export function solveDots(
  face: PlannableFace,
  natural: Sides<NaturalDots>,
  skin: Skin,
  choices: SettledChoices,
): Solution {
  const { lead, levels, levelLimit, pins, thickness, arch } = choices;
  const held = levelLimit === undefined ? {} : { limit: levelLimit };
  const led = { across: lead, inHeight: lead };
  const evened = { across: lead, inHeight: levels, ...held };
  const border = borderReader(face, natural);

  const guideOn = (side: Side, convention: GuideConvention): Guide =>
    guideFor(face, side, convention, choices.eyeWidthShare);

  const starts = eachSide((side) => guideOn(side, choices.start));
  const upperStart = settleDot("upperStart", (side) => border.meet(starts[side]), evened, pins);
  const lowerStart = lowerDot("lowerStart", upperStart, thickness.start, pins);

  const tails = eachSide((side) => guideOn(side, choices.tail));
  const levelWith = TAIL_HEIGHTS[choices.tailHeight];
  const tailEnd = settleDot(
    "tailEnd",
    (side) => {
      if (levelWith === "none") return border.meet(tails[side]);
      return placeAtHeight(tails[side], { upperStart, lowerStart }[levelWith][side].height);
    },
    levelWith === "none" ? { ...led, ...held } : led,
    pins,
  );

  const onBrow: { readonly [Rule in BrowArch]: (side: Side) => SidePlace } = {
    natural: border.archBetweenLimits,
    // On its own hair: a border that is nowhere near the settled dots would not divide.
    "brow-length-share": (side) =>
      border.divideAt(choices.frontShare, skin, side, upperStart[side].own, tailEnd[side].own),
  };
  const archOnBorder = settleDot(
    "upperArch",
    (side) => (isGuide(arch) ? border.meet(guideOn(side, arch)) : onBrow[arch](side)),
    evened,
    pins,
  );
  const archIsPinned = pins.some(({ dot }) => dot === "upperArch");
  const upperArch =
    arch === "brow-length-share" && !archIsPinned
      ? evenShare(archOnBorder, upperStart, tailEnd, skin, choices)
      : archOnBorder;

  const upperBody = bodyDot({ upperStart, upperArch, tailEnd }, choices);
  const dots: { readonly [Name in Dot]: Sides<SettledDot> } = {
    upperStart,
    upperBody,
    upperArch,
    tailEnd,
    lowerStart,
    lowerBody: lowerDot("lowerBody", upperBody, thickness.body, pins),
    lowerArch: lowerDot("lowerArch", upperArch, thickness.arch, pins),
  };
  const even = {
    dots: eachSide((side) => overDots((dot) => pointOnSide(dots[dot][side], side))),
    origins: eachSide((side) => overDots((dot) => dots[dot][side].origin)),
  };
  return {
    ...carryByMeasure(even, (side) => border.meet(starts[side]).distance, skin, choices),
    guides: eachSide((side) => [
      starts[side],
      ...(isGuide(arch) ? [guideOn(side, arch)] : []),
      tails[side],
    ]),
    events: border.events,
  };
}

interface BorderReader {
  /** Where a guide meets the hair; where it meets nothing, its place at the natural dot's height. */
  readonly meet: (guide: Guide) => SidePlace;
  /**
   * The natural arch, or where the border meets the nearer limit where it lies outside both. That it is
   * too flat to be one was settled before; a border without any has the place beside the other's.
   */
  readonly archBetweenLimits: (side: Side) => SidePlace;
  /** Where the hair between start and tail end divides by a front share. */
  readonly divideAt: (
    share: number,
    skin: Skin,
    side: Side,
    start: SidePlace,
    tail: SidePlace,
  ) => SidePlace;
  readonly events: readonly BorderEvent[];
}

function borderReader(face: PlannableFace, natural: Sides<NaturalDots>): BorderReader {
  const events: BorderEvent[] = [];
  const meet = (guide: Guide): SidePlace => {
    const { mark, side } = guide;
    const hit = meetGuide(guide, face[side].brow);
    if (hit === undefined) {
      events.push({ code: "guide-missed", side, mark });
      return placeAtHeight(guide, naturalHeight(natural[side], guide));
    }
    if (hit.extended) events.push({ code: "border-extended", side, mark });
    return placeOnSide(hit.at, side);
  };
  const ownArch = (side: Side): SidePlace | undefined => {
    const at = crestOf(natural[side].arch);
    if (at === undefined) return undefined;
    const place = placeOnSide(at, side);
    const { inner, outer } = archLimits(face, side);
    if (place.distance < inner.distance) return meet(limitGuide(face, side, inner));
    if (place.distance > outer.distance) return meet(limitGuide(face, side, outer));
    return place;
  };
  return {
    meet,
    archBetweenLimits: (side) =>
      ownArch(side) ?? besideArch(face, natural[side], side, ownArch(otherSide(side))),
    divideAt: (share, skin, side, start, tail) => {
      const { upper } = face[side].brow;
      return placeOnSide(
        archAtShare(upper, pointOnSide(start, side), pointOnSide(tail, side), skin, share).at,
        side,
      );
    },
    events,
  };
}

/** Where a border without an arch runs as far from the midline as that of the other brow lies. */
function besideArch(
  face: PlannableFace,
  { arch: { rise } }: NaturalDots,
  side: Side,
  across: SidePlace | undefined,
): SidePlace {
  const x = across && length<"mm">(pointOnSide(across, side)[0]);
  const height = x === undefined ? undefined : heightOver(x, face[side].brow.upper);
  if (across !== undefined && height !== undefined) return { distance: across.distance, height };
  refuseFlat(side, rise.value);
}

/** Height of the natural dot that a guide is about. */
function naturalHeight({ dots, arch }: NaturalDots, { mark, side }: Guide): number {
  switch (mark) {
    case "start":
      return dots.upperStart[1];
    case "tail":
      return dots.tailEnd[1];
    case "arch":
      return crestOf(arch)?.[1] ?? refuseFlat(side, arch.rise.value);
  }
}

function crestOf(arch: NaturalArch): FlatPoint<"mm"> | undefined {
  return arch.kind === "flat" ? arch.farthest : arch.at;
}

function limitGuide(face: PlannableFace, side: Side, { convention }: ArchLimit): Guide {
  return guideFor(face, side, convention, LIMBUS_SHARE);
}

function guideFor(
  face: PlannableFace,
  side: Side,
  convention: GuideConvention,
  share: number,
): Guide {
  return guideLine(requireGuideLandmarks(face, convention), side, convention, { share });
}

function placeAtHeight(guide: Guide, height: number): SidePlace {
  const meeting = intersect(guide.line, lineAlong(flatPoint<"mm">(0, height), [1, 0]));
  if (meeting.kind !== "crossing") {
    const field = `${guide.side} ${guide.mark} guide (${guide.convention})`;
    const need = "a direction that is not level";
    refuse("no-solution", "planDots", field, guide.line.direction, need);
  }
  return placeOnSide(meeting.at, guide.side);
}

function refuseFlat(side: Side, rise: number): never {
  const need = "an arch that shows: a flat brow has none to follow";
  refuse("no-solution", "planDots", `rise of the ${side} brow`, rise, need);
}
