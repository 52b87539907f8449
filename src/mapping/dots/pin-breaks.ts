import {
  type CompleteDots,
  type Dot,
  DOTS,
  lengthBetween,
  type Skin,
} from "../../landmarks/index.js";
import { frontShare } from "../../proportions/index.js";
import { placeOnSide } from "../../symmetry/index.js";
import {
  eachSide,
  type Limits,
  type Note,
  type Sides,
  type ToleranceSet,
} from "../../units/index.js";
import { note, SIDES } from "../../units/internal.js";
import type { SettledChoices } from "./planned-dots.js";
import { type ReasonCode, REASONS } from "./words.js";

/**
 * What pins break: levels and evenness of the two brows, and the front share where one was asked
 * for. Looked at by the values alone, under the tolerances that the plan is compared by.
 */
export function pinBreaks(
  dots: Sides<CompleteDots<"mm">>,
  skin: Skin,
  { arch, carry, frontShare: share, levelLimit, pins }: SettledChoices,
  { tolerances }: ToleranceSet,
): readonly Note<ReasonCode>[] {
  if (pins.length === 0) return [];
  const [position, thickness] = [tolerances.position?.limits, tolerances.thickness?.limits];
  const pinned = (...dots: readonly Dot[]): boolean => pins.some(({ dot }) => dots.includes(dot));
  // What a limit of levels holds back is said as such.
  const heights = LEVEL_DOTS.filter(([, dot]) => levelLimit === undefined || pinned(dot));
  return [
    ...heights.flatMap(([code, dot]) => unevenHeights(code, dot, dots, position)),
    // A brow carried by measure keeps its own distances from the midline.
    ...(carry === "measure"
      ? []
      : ACROSS_DOTS.flatMap((dot) => unevenDistances(dot, dots, position))),
    ...STATIONS.flatMap((station) => unevenThickness(station, dots, thickness)),
    ...(arch === "brow-length-share" && pinned("upperStart", "upperArch", "tailEnd")
      ? brokenShares(dots, skin, share, tolerances.frontShare?.limits)
      : []),
  ];
}

const LEVEL_DOTS = [
  ["pins-break-levels", "upperStart"],
  ["pins-break-levels", "upperArch"],
  ["pins-break-tail-heights", "tailEnd"],
] as const;
const ACROSS_DOTS = ["upperStart", "upperArch", "tailEnd"] as const;
const STATIONS = [
  ["start", "upperStart", "lowerStart"],
  ["body", "upperBody", "lowerBody"],
  ["arch", "upperArch", "lowerArch"],
] as const;

function unevenHeights(
  code: "pins-break-levels" | "pins-break-tail-heights",
  dot: Dot,
  dots: Sides<CompleteDots<"mm">>,
  limits: Limits | undefined,
): readonly Note<ReasonCode>[] {
  const { right, left } = eachSide((side) => dots[side][dot][1]);
  const higher = right > left ? "right" : "left";
  return broken(left - right, limits).map((broke) =>
    note(REASONS, code, { ...broke, dot: DOTS[dot].words, higher }),
  );
}

function unevenDistances(
  dot: Dot,
  dots: Sides<CompleteDots<"mm">>,
  limits: Limits | undefined,
): readonly Note<ReasonCode>[] {
  const { right, left } = eachSide((side) => placeOnSide(dots[side][dot], side).distance);
  const farther = right > left ? "right" : "left";
  const values = { dot: DOTS[dot].words, farther };
  return broken(left - right, limits).map((broke) =>
    note(REASONS, "pins-break-distances", { ...broke, ...values }),
  );
}

function unevenThickness(
  [station, upper, lower]: (typeof STATIONS)[number],
  dots: Sides<CompleteDots<"mm">>,
  limits: Limits | undefined,
): readonly Note<ReasonCode>[] {
  const { right, left } = eachSide((side) => dots[side][upper][1] - dots[side][lower][1]);
  const thicker = right > left ? "right" : "left";
  const values = { station, thicker };
  return broken(left - right, limits).map((broke) =>
    note(REASONS, "pins-break-thickness", { ...broke, ...values }),
  );
}

function brokenShares(
  dots: Sides<CompleteDots<"mm">>,
  skin: Skin,
  asked: number,
  limits: Limits | undefined,
): readonly Note<ReasonCode>[] {
  return SIDES.flatMap((side) => {
    const { upperStart, upperArch, tailEnd } = dots[side];
    const share = frontShare(
      lengthBetween(upperStart, upperArch, skin),
      lengthBetween(upperArch, tailEnd, skin),
    );
    return broken(share - asked, limits).map((broke) =>
      note(REASONS, "pins-break-share", { ...broke, side, share, asked }),
    );
  });
}

/** By how much a limit is broken, where it is. */
function broken(
  difference: number,
  { lower = -Infinity, upper = Infinity }: Limits = {},
): readonly { readonly difference: number; readonly limit: number }[] {
  if (difference >= lower - ROUNDING && difference <= upper + ROUNDING) return [];
  return [{ difference: Math.abs(difference), limit: Math.abs(difference > 0 ? upper : lower) }];
}

/** What adding and subtracting coordinates may cost, in mm. */
const ROUNDING = 1e-9;
