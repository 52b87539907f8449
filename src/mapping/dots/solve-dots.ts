import type { Line } from "../../geometry/index.js";
import { heightOver } from "../../geometry/internal.js";
import {
  type CompleteDots,
  type Dot,
  type GuideConvention,
  GUIDES,
  type Mark,
  type Skin,
  type StartConvention,
  type TailConvention,
} from "../../landmarks/index.js";
import { isGuide } from "../../landmarks/internal.js";
import { type NaturalArch, type NaturalDots } from "../../proportions/index.js";
import {
  atHeight,
  BORDER_END,
  meetSight,
  middleOver,
  placeAtShare,
  sightLine,
} from "../../proportions/internal.js";
import { placeOnSide, pointOnSide, type SidePlace } from "../../symmetry/index.js";
import {
  eachSide,
  type FlatPoint,
  flatPoint,
  length,
  type Note,
  otherSide,
  type Point,
  type Side,
  type Sides,
} from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { archLimits, LIMBUS_SHARE } from "./arch-limits.js";
import { carryByMeasure } from "./carry-by-measure.js";
import { evenShare } from "./even-share.js";
import { isHair } from "./is-hair.js";
import { bodyDot, lowerDot } from "./lower-dots.js";
import { KEEP_HAIR, type Lead, MOST_TAKEN, TAIL_HEIGHTS } from "../choices/choice-tables.js";
import type { DotOrigin, SettledChoices } from "./planned-dots.js";
import { reason } from "./notes.js";
import type { PlannableFace } from "./plannable-face.js";
import { heldNear, type LedDot, overDots, type SettledDot, settleDot } from "./settle-dot.js";

/** Where a guide did not meet the hair itself, or would have taken it away. */
export type BorderEvent = Note<"border-extended" | "guide-missed" | "hair-kept" | "tail-completed">;

type Tell = (event: BorderEvent) => unknown;

/** The dots that follow from a face and settled choices, and how they came about. */
export interface Solution {
  readonly dots: Sides<CompleteDots<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
}

/** What landmarks and hair of one side ask for; each place is looked for when it is first needed. */
export interface SideAsks {
  readonly start: () => SidePlace;
  /** Hair that ends early heads on by its last 5 mm, the farther the less: what is missing tends to a level. */
  readonly tail: (level: number) => SidePlace;
  /** Where the tail's guide is at a height. */
  readonly tailAt: (height: number) => SidePlace;
  /** Where the chosen guide of the arch meets the hair. */
  readonly archOn: (convention: GuideConvention) => SidePlace;
  /**
   * The natural arch, or where the border meets the nearer limit where it lies outside both; nothing where
   * the border has none. That it is too flat to be one was settled before.
   */
  readonly naturalArch: () => SidePlace | undefined;
  /** Where a border without an arch runs as far from the midline as that of the other brow lies. */
  readonly archBeside: (across: SidePlace | undefined) => SidePlace;
  /** The hair over a place; none past the end of a tail that is not seen. */
  readonly hairAt: (dot: Dot, distance: number) => SidePlace | undefined;
  /** Where the hair between start and tail end divides by the front share. */
  readonly divideAt: (start: SidePlace, tail: SidePlace, skin: Skin) => SidePlace;
}

/** Looks for what one side of a face asks for, and tells of guides that do not meet its hair. */
export function asksOf(
  face: PlannableFace,
  side: Side,
  { dots, arch }: NaturalDots,
  choices: SettledChoices,
  tell: Tell = () => undefined,
): SideAsks {
  const { brow } = face[side];
  const keepHair = isHair(face, side) ? (choices.keepHair ?? KEEP_HAIR) : 0;
  const sight = (convention: GuideConvention, share = choices.eyeWidthShare): Line<"mm"> =>
    sightLine(convention, face[side], share);
  const naturalHeight = (mark: Mark): number => {
    if (mark === "start") return dots.upperStart[1];
    if (mark === "tail") return dots.tailEnd[1];
    return crestOf(arch)?.[1] ?? refuseFlat(side, arch.rise.value);
  };
  const levelWith = (convention: GuideConvention, line: Line<"mm">, height: number): SidePlace => {
    const at = atHeight(line, height);
    if (at !== undefined) return placeOnSide(at, side);
    const field = `${side} ${convention}`;
    refuse("no-solution", field, line.direction, "no level direction");
  };
  const meet = (convention: GuideConvention, share?: number, told: Tell = tell): SidePlace => {
    const { mark } = GUIDES[convention];
    const line = sight(convention, share);
    const hit = meetSight({ mark, line }, brow);
    if (hit === undefined) {
      told(reason("guide-missed", { side, mark }));
      return levelWith(convention, line, naturalHeight(mark));
    }
    if (hit.extended) told(reason("border-extended", { side, mark }));
    return placeOnSide(hit.at, side);
  };
  /** A mark at an end of the brow: where its hair ends, or on a guide, which yields to hair past it. */
  const endAt = (rule: StartConvention | TailConvention, end: Point<"mm">): EndAsks => {
    const own = placeOnSide(end, side);
    if (rule === "natural") {
      return { own, place: () => own, at: (height) => ({ ...own, height }) };
    }
    const { mark } = GUIDES[rule];
    /** Which share of the hair past a guide is kept. */
    const shareKept = ({ distance }: SidePlace): number => {
      const past = mark === "start" ? distance - own.distance : own.distance - distance;
      if (past <= 0 || keepHair === 0) return 0;
      const kept = Math.min(past, Math.max(keepHair, past - MOST_TAKEN));
      if (kept > TOLD) tell(reason("hair-kept", { side, mark, past, kept }));
      return kept / past;
    };
    return {
      own,
      place: once(() => {
        const missed: BorderEvent[] = [];
        const met = meet(rule, undefined, (event) => missed.push(event));
        const share = shareKept(met);
        // A guide that hair grows past does not miss it, though it may miss one of its borders.
        if (share === 0) missed.forEach(tell);
        return {
          distance: met.distance + share * (own.distance - met.distance),
          height: met.height + share * (own.height - met.height),
        };
      }),
      at: (height) => {
        const level = levelWith(rule, sight(rule), height);
        const { distance } = level;
        return { distance: distance + shareKept(level) * (own.distance - distance), height };
      },
    };
  };
  const hairAt: SideAsks["hairAt"] = (dot, distance) => {
    const x = length<"mm">(pointOnSide({ distance, height: 0 }, side)[0]);
    const height =
      dot !== "tailEnd"
        ? heightOver(x, brow.upper, BORDER_END)
        : distance > tail.own.distance + BORDER_END
          ? undefined
          : middleOver(x, brow);
    return height === undefined ? undefined : { distance, height };
  };
  const start = endAt(choices.start, dots.upperStart);
  const [x, tip] = dots.tailEnd;
  // Hair that ends bluntly ends in the middle of its borders, as its moves compare it.
  const tail = endAt(choices.tail, flatPoint(x, middleOver(length(x), brow) ?? tip));
  return {
    start: start.place,
    tail: (level) => {
      const place = tail.place();
      const missing = place.distance - tail.own.distance;
      if (missing <= BORDER_END) return place;
      tell(reason("tail-completed", { side, distance: missing }));
      return tail.at(level + ((place.height - level) * BORDER_END) / missing);
    },
    tailAt: tail.at,
    archOn: meet,
    naturalArch: once(() => {
      const at = crestOf(arch);
      if (at === undefined) return undefined;
      const place = placeOnSide(at, side);
      const { inner, outer } = archLimits(face, side);
      if (place.distance < inner.distance) return meet(inner.convention, LIMBUS_SHARE);
      if (place.distance > outer.distance) return meet(outer.convention, LIMBUS_SHARE);
      return place;
    }),
    archBeside: (across) =>
      (across && hairAt("upperArch", across.distance)) ?? refuseFlat(side, arch.rise.value),
    hairAt,
    divideAt: (start, tail, skin) => {
      const [from, to] = [pointOnSide(start, side), pointOnSide(tail, side)];
      return placeOnSide(placeAtShare(brow.upper, from, to, skin, choices.frontShare).at, side);
    },
  };
}

/** What is asked for at an end of a brow. */
interface EndAsks {
  /** Where its hair ends. */
  readonly own: SidePlace;
  readonly place: () => SidePlace;
  readonly at: (height: number) => SidePlace;
}

/** Less hair past a guide is not worth a word; ours, in mm. */
const TOLD = 0.05;

/** What a question finds, asked at most once. */
function once<Found>(find: () => Found): () => Found {
  let known: { readonly found: Found } | undefined;
  return () => (known ??= { found: find() }).found;
}

/**
 * Solves the dots of both brows: starts, tail ends, arches, then what hangs below them. Nothing is
 * decided here that is not in `choices`, so small changes of the face make small changes of the dots.
 */
export function solveDots(asks: Sides<SideAsks>, skin: Skin, choices: SettledChoices): Solution {
  const { lead, levels, levelLimit, pins, thickness, arch } = choices;
  const settle = (
    dot: Dot,
    own: (side: Side) => SidePlace,
    inHeight: Lead,
    limit: number | undefined,
  ): Sides<LedDot> => {
    const hair = (side: Side, at: number): number | undefined => asks[side].hairAt(dot, at)?.height;
    return settleDot(dot, own, lead, inHeight, pins, heldNear(hair, limit, inHeight));
  };

  const upperStart = settle("upperStart", (side) => asks[side].start(), levels, levelLimit);
  const lowerStart = lowerDot("lowerStart", upperStart, thickness.start, pins);

  const levelWith = TAIL_HEIGHTS[choices.tailHeight];
  const tailEnd = settle(
    "tailEnd",
    (side) => {
      if (levelWith === "none") return asks[side].tail(lowerStart[side].height);
      return asks[side].tailAt({ upperStart, lowerStart }[levelWith][side].height);
    },
    lead,
    levelWith === "none" ? levelLimit : undefined,
  );

  const archOf = (side: Side): SidePlace => {
    if (isGuide(arch)) return asks[side].archOn(arch);
    if (arch !== "natural") {
      // On its own hair: a border that is nowhere near the settled dots would not divide.
      return asks[side].divideAt(upperStart[side].own, tailEnd[side].own, skin);
    }
    return asks[side].naturalArch() ?? asks[side].archBeside(asks[otherSide(side)].naturalArch());
  };
  const archOnBorder = settle("upperArch", archOf, levels, levelLimit);
  const upperArch =
    arch === "brow-length-share" && pins.every(({ dot }) => dot !== "upperArch")
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
  return carryByMeasure(even, (side) => asks[side].start().distance, skin, choices);
}

function crestOf(arch: NaturalArch): FlatPoint<"mm"> | undefined {
  return arch.kind === "flat" ? arch.farthest : arch.at;
}

function refuseFlat(side: Side, rise: number): never {
  const need = "an arch that shows";
  refuse("no-solution", `rise of the ${side} brow`, rise, need);
}
