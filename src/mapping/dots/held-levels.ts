import { type CompleteDots, type Dot, DOTS } from "../../landmarks/index.js";
import { eachSide, type Note, type Sides } from "../../units/index.js";
import { note } from "../../units/internal.js";
import type { SettledChoices } from "./planned-dots.js";
import { type ReasonCode, REASONS } from "./words.js";

/** The dots whose heights are evened, where no pin has settled them. */
const EVENED: readonly Dot[] = ["upperStart", "upperArch", "tailEnd"];

/** What stays uneven because no dot was to leave its hair by more than a limit. */
export function heldLevels(
  dots: Sides<CompleteDots<"mm">>,
  { levelLimit, pins }: SettledChoices,
): readonly Note<ReasonCode>[] {
  if (levelLimit === undefined) return [];
  return EVENED.filter((dot) => pins.every((pin) => pin.dot !== dot)).flatMap((dot) => {
    const { right, left } = eachSide((side) => dots[side][dot][1]);
    const difference = Math.abs(left - right);
    if (difference <= ROUNDING) return [];
    const higher = right > left ? "right" : "left";
    return [
      note(REASONS, "levels-held-back", {
        dot: DOTS[dot].words,
        difference,
        limit: levelLimit,
        higher,
      }),
    ];
  });
}

/** What adding and subtracting coordinates may cost, in mm. */
const ROUNDING = 1e-9;
