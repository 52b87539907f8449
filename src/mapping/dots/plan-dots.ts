import { heightOver, hermiteAt } from "../../geometry/internal.js";
import { type CompleteDots, type Face, landmarkUncertainty } from "../../landmarks/index.js";
import { usualSkin } from "../../landmarks/internal.js";
import {
  type BrowCurves,
  browCurves,
  dotsFound,
  LOWER_DOTS,
  startOf,
} from "../../proportions/internal.js";
import {
  eachSide,
  GeometryError,
  length,
  type Side,
  WORKING_TOLERANCES,
} from "../../units/index.js";
import { refuse, refusingAs, SIDES } from "../../units/internal.js";
import { carryReasons } from "./carry-by-measure.js";
import type { Choices, Pin } from "../choices/choices.js";
import { requireDotsInOrder, withPins } from "../choices/dots-in-order.js";
import { heldLevels, pinBreaks } from "./unevenness.js";
import type { FaceRead, PlannedDots, SettledChoices } from "./planned-dots.js";
import { type PlannableFace, requirePlannable } from "./plannable-face.js";
import { settleChoices } from "./settle-choices.js";
import { solveWithinLimits } from "./solve-within-limits.js";

/**
 * The dots of both brows and the reasons for them: a plan without what is read on it.
 *
 * Levels come first, then starts, tail ends, arches and thickness; both sides are mirror images of
 * each other except where dots are pinned, or held near their hair.
 *
 * @throws GeometryError `missing-landmark` where a chosen guide has none; `out-of-range` for a
 * choice out of its range; `contradicting-pins`; `no-solution` where the dots do not stand in order,
 * or where no outline runs through them
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 50, 23]), mm([sign * 57, 18])] },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * planDots(face, { arch: "exocanthion-vertical" }).dots.left.upperArch; // → [44, 25]
 * ```
 */
export function planDots(face: PlannableFace, choices: Choices = {}): PlannedDots {
  return refusingAs("planDots", () => planAcross(0, readFace(face), choices));
}

export function readFace(given: Face<"mm">): FaceRead {
  const face = requirePlannable(given);
  const u = landmarkUncertainty(face, "brow");
  const natural = eachSide((side) => dotsFound(face[side].brow, u));
  return { face, natural, skin: usualSkin(face) };
}

/** Plans across a midline whose direction is known to so many degrees (standard uncertainty). */
export function planAcross(
  midlineU: number,
  { face, natural, skin }: FaceRead,
  choices: Choices,
): PlannedDots {
  const { settled, solution } = solveWithinLimits(
    { face, natural, skin },
    settleChoices(face, natural, skin, choices, midlineU),
    choices.arch === "brow-length-share",
  );
  const { dots, origins, guides, events } = solution;
  for (const side of pinnedFirst(settled.value.pins)) {
    requireDotsInOrder(dots[side], side, settled.value.pins);
    requireOutline(face[side], dots[side], side, settled.value);
  }
  return {
    face,
    skin,
    choices: settled.value,
    reasons: [
      ...settled.reasons,
      ...carryReasons(dots, settled.value),
      // Each event is said once.
      ...new Map(events.map((event) => [JSON.stringify(event), event])).values(),
      ...heldLevels(dots, settled.value),
      ...pinBreaks(dots, skin, settled.value, choices.tolerances ?? WORKING_TOLERANCES),
    ],
    natural,
    guides,
    dots,
    origins,
  };
}

/** Both sides, a pinned one before what mirrors it: what cannot be is said of the pin itself. */
function pinnedFirst(pins: readonly Pin[]): readonly Side[] {
  return pins[0]?.side === "left" ? ["left", "right"] : SIDES;
}

/** Refuses dots that no outline runs through, and an outline that runs over the eye. */
function requireOutline(
  { endocanthion, exocanthion, upperLid: lid = [endocanthion, exocanthion] }: PlannableFace["left"],
  dots: CompleteDots<"mm">,
  side: Side,
  { shape, pins }: SettledChoices,
): void {
  const code = pins.length > 0 ? "contradicting-pins" : "no-solution";
  const refuseFor = (field: string, value: unknown, need: string): never =>
    refuse(code, field, value, withPins(need, pins));
  let curves: BrowCurves;
  try {
    curves = browCurves(dots, shape);
  } catch (error) {
    if (!(error instanceof GeometryError) || error.code !== "inconsistent") throw error;
    const { field, value, need } = error.detail;
    return refuseFor(field.replace("dots.", `${side} `), value, need);
  }
  const { outwards, lower } = curves;
  const rooms = lid.flatMap(([x, y]) => {
    const from = outwards * x;
    const isUnder = from >= startOf(lower).x && from <= outwards * dots.tailEnd[0];
    return isUnder ? [hermiteAt(lower, from) - y] : [];
  });
  // A border that starts or bends between two points of the lid may pass under it there.
  for (const dot of LOWER_DOTS) {
    const [x, y] = dots[dot];
    rooms.push(y - (heightOver(length(x), lid) ?? y));
  }
  const room = Math.min(...rooms);
  if (room < 0) {
    const need = "0 mm or more: a thinner brow, higher levels or another guide";
    refuseFor(`space over the ${side} lid`, room, need);
  }
}
