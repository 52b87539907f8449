import { type CompleteDots, type Dot, lengthBetween, type Skin } from "../../landmarks/index.js";
import { frontShare } from "../../proportions/index.js";
import { STATIONS } from "../../proportions/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import {
  eachSide,
  type Limits,
  type Note,
  type Side,
  type Sides,
  type ToleranceSet,
} from "../../units/index.js";
import { CLIENTS_NOTICE, keysOf, OTHERS_NOTICE, SIDES } from "../../units/internal.js";
import type { SettledChoices } from "./planned-dots.js";
import { reason, type ReasonCode } from "./notes.js";

/** What pins break of levels, evenness and an asked front share, by values alone under the plan's tolerances. */
export function pinBreaks(
  dots: Sides<CompleteDots<"mm">>,
  skin: Skin,
  { arch, carry, frontShare: asked, levelLimit, pins }: SettledChoices,
  { tolerances }: ToleranceSet,
): readonly Note<ReasonCode>[] {
  if (pins.length === 0) return [];
  const [position, thickness] = [tolerances.position?.limits, tolerances.thickness?.limits];
  const pinned = (...names: readonly Dot[]): boolean => pins.some(({ dot }) => names.includes(dot));
  // What a limit of levels holds back is said as such.
  const levels = LEVEL_DOTS.filter(([, dot]) => levelLimit === undefined || pinned(dot));
  const uneven = levels.flatMap(([code, dot]) => {
    const { by, more } = apart((side) => dots[side][dot][1]);
    const values = { dot, higher: more };
    return broken(by, position).map((broke) => reason(code, { ...broke, ...values }));
  });
  // A brow carried by measure keeps its own distances from the midline.
  const across = (carry === "measure" ? [] : LEVEL_DOTS).flatMap(([, dot]) => {
    const { by, more } = apart((side) => placeOnSide(dots[side][dot], side).distance);
    const values = { dot, farther: more };
    return broken(by, position).map((broke) =>
      reason("pins-break-distances", { ...broke, ...values }),
    );
  });
  const thick = keysOf(STATIONS).flatMap((station) => {
    const { upper, lower } = STATIONS[station];
    const { by, more } = apart((side) => dots[side][upper][1] - dots[side][lower][1]);
    return broken(by, thickness).map((broke) =>
      reason("pins-break-thickness", { ...broke, station, thicker: more }),
    );
  });
  const decides = arch === "brow-length-share" && pinned("upperStart", "upperArch", "tailEnd");
  const shares = (decides ? SIDES : []).flatMap((side) => {
    const { upperStart, upperArch, tailEnd } = dots[side];
    const front = lengthBetween(upperStart, upperArch, skin);
    const share = frontShare(front, lengthBetween(upperArch, tailEnd, skin));
    return broken(share - asked, tolerances.frontShare?.limits).map((broke) =>
      reason("pins-break-share", { ...broke, side, share, asked }),
    );
  });
  return [...uneven, ...across, ...thick, ...shares];
}

const LEVEL_DOTS = [
  ["pins-break-levels", "upperStart"],
  ["pins-break-levels", "upperArch"],
  ["pins-break-tail-heights", "tailEnd"],
] as const;

/** By how much the left side has more of something than the right one, and which has more. */
function apart(of: (side: Side) => number): { readonly by: number; readonly more: Side } {
  const { right, left } = eachSide(of);
  return { by: left - right, more: right > left ? "right" : "left" };
}

/** By how much a limit is broken, where it is. */
function broken(
  difference: number,
  { lower = -Infinity, upper = Infinity }: Limits = {},
): readonly { readonly difference: number; readonly limit: number }[] {
  if (difference >= lower - ROUNDING && difference <= upper + ROUNDING) return [];
  return [{ difference: Math.abs(difference), limit: Math.abs(difference > 0 ? upper : lower) }];
}

/** The dots whose heights are evened, where no pin has settled them. */
const EVENED: readonly Dot[] = ["upperStart", "upperArch", "tailEnd"];

/**
 * What stays uneven because no dot was to leave its hair by more than a limit, and who notices as much. A tail
 * end that is to be level with a start goes where that choice takes it, however far its hair is.
 */
export function heldLevels(
  dots: Sides<CompleteDots<"mm">>,
  { levelLimit, pins, tailHeight }: SettledChoices,
): readonly Note<ReasonCode>[] {
  if (levelLimit === undefined) return [];
  const held = EVENED.filter(
    (dot) =>
      pins.every((pin) => pin.dot !== dot) && (dot !== "tailEnd" || tailHeight === "natural"),
  ).flatMap((dot) => {
    const { right, left } = eachSide((side) => dots[side][dot][1]);
    const difference = Math.abs(left - right);
    return difference <= ROUNDING
      ? []
      : [{ dot, difference, limit: levelLimit, higher: right > left ? "right" : "left" } as const];
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
