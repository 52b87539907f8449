import { type CompleteDots, type Dot, type Skin } from "../../landmarks/index.js";
import { byRuler } from "../../landmarks/internal.js";
import { shareOf, STATIONS } from "../../proportions/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import {
  eachSide,
  type Note,
  type Side,
  type Sides,
  type Tolerance,
  type ToleranceSet,
} from "../../units/index.js";
import {
  CLIENTS_NOTICE,
  keysOf,
  type Numbers,
  OTHERS_NOTICE,
  SIDES,
} from "../../units/internal.js";
import type { SettledChoices } from "./planned-dots.js";
import { reason, type ReasonCode } from "./notes.js";

/** What pins break of levels, evenness and an asked front share, by values alone under the plan's tolerances. */
export function pinBreaks(
  dots: Sides<CompleteDots<"mm">>,
  skin: Skin,
  { arch, carry, frontShare: asked, levelLimit, pins }: SettledChoices,
  { tolerances }: ToleranceSet,
): readonly Note<ReasonCode>[] {
  const breaks: Note<ReasonCode>[] = [];
  if (pins.length === 0) return breaks;
  const { position, thickness, frontShare: share } = tolerances;
  const pinned = (...names: readonly Dot[]): boolean => pins.some(({ dot }) => names.includes(dot));
  /** Tells where the left side has more of something than the right one than is allowed, or less. */
  const tell = (
    tolerance: Tolerance | undefined,
    has: Sides<number>,
    noteOf: (broken: Numbers<"difference" | "limit">, more: Side) => Note<ReasonCode>,
  ): void => {
    const { lower = -Infinity, upper = Infinity } = tolerance?.limits ?? {};
    const by = has.left - has.right;
    if (by >= lower - ROUNDING && by <= upper + ROUNDING) return;
    const broken = { difference: Math.abs(by), limit: Math.abs(by > 0 ? upper : lower) };
    breaks.push(noteOf(broken, by > 0 ? "left" : "right"));
  };
  for (const [code, dot] of LEVEL_DOTS) {
    // What a limit of levels holds back is said as such.
    if (levelLimit !== undefined && !pinned(dot)) continue;
    const heights = eachSide((side) => dots[side][dot][1]);
    tell(position, heights, (broken, higher) => reason(code, { ...broken, dot, higher }));
  }
  for (const [, dot] of LEVEL_DOTS) {
    // A brow carried by measure keeps its own distances from the midline.
    if (carry === "measure") continue;
    const across = eachSide((side) => placeOnSide(dots[side][dot], side).distance);
    tell(position, across, (broken, farther) =>
      reason("pins-break-distances", { ...broken, dot, farther }),
    );
  }
  for (const station of keysOf(STATIONS)) {
    const { upper, lower } = STATIONS[station];
    const thick = eachSide((side) => dots[side][upper][1] - dots[side][lower][1]);
    tell(thickness, thick, (broken, thicker) =>
      reason("pins-break-thickness", { ...broken, station, thicker }),
    );
  }
  for (const side of SIDES) {
    if (arch !== "brow-length-share" || !pinned("upperStart", "upperArch", "tailEnd")) continue;
    const { upperStart, upperArch, tailEnd } = dots[side];
    const front = byRuler(upperStart, upperArch, skin);
    const left = shareOf(front, byRuler(upperArch, tailEnd, skin));
    tell(share, { right: asked, left }, (broken) =>
      reason("pins-break-share", { ...broken, side, share: left, asked }),
    );
  }
  return breaks;
}

/** The dots whose heights are evened, where no pin has settled them. */
const LEVEL_DOTS = [
  ["pins-break-levels", "upperStart"],
  ["pins-break-levels", "upperArch"],
  ["pins-break-tail-heights", "tailEnd"],
] as const;

/**
 * What stays uneven because no dot was to leave its hair by more than a limit, and who notices as much. A tail
 * end that is to be level with a start goes where that choice takes it, however far its hair is.
 */
export function heldLevels(
  dots: Sides<CompleteDots<"mm">>,
  { levelLimit, pins, tailHeight }: SettledChoices,
): readonly Note<ReasonCode>[] {
  if (levelLimit === undefined) return [];
  const held = LEVEL_DOTS.flatMap(([, dot]) => {
    const { right, left } = eachSide((side) => dots[side][dot][1]);
    const difference = Math.abs(left - right);
    const isEvened = dot !== "tailEnd" || tailHeight === "natural";
    if (difference <= ROUNDING || !isEvened || pins.some((pin) => pin.dot === dot)) return [];
    const higher: Side = right > left ? "right" : "left";
    return [{ dot, difference, limit: levelLimit, higher }];
  });
  if (held.length === 0) return [];
  return [
    ...held.map((values) => reason("levels-held-back", values)),
    reason("levels-left", {
      most: Math.max(...held.map(({ difference }) => difference)),
      clients: CLIENTS_NOTICE,
      others: OTHERS_NOTICE,
    }),
  ];
}

/** What adding and subtracting coordinates may cost, in mm. */
const ROUNDING = 1e-9;
