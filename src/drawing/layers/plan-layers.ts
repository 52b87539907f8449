import { eachSide } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { BrowPlan, DrawnCheck } from "../../mapping/index.js";
import { type Box, boxAround, withMargin } from "../canvas/box.js";
import type { Brush } from "../canvas/brush.js";
import { checkLayer } from "./check-layer.js";
import { dotsLayer, grownLayer, guessNameLayer, plannedBrowLayer } from "./brow-layers.js";
import { findingsLayer } from "./findings-layer.js";
import { eyeRoom, eyeRoomLayer } from "./eye-room.js";
import { eyeLayer, landmarksLayer, midlineLayer } from "./face-layers.js";
import { guidesLayer } from "./guide-layer.js";
import type { Layer } from "../canvas/layer.js";
import { LINE_HEIGHT, TYPE_SIZES } from "../canvas/text-size.js";
import { typeSize, type View } from "../canvas/view.js";
import { lengthsLayer } from "./lengths-layer.js";
import { overlapLayer } from "./overlap-layer.js";
import { label } from "../../words/internal.js";
import { pinsLayer } from "./pins-layer.js";
import { verdictLayer } from "./verdict-layer.js";

/** What a picture of a plan may show besides the plan. */
export interface AlsoShown {
  /** Whether hair outside the plan and skin inside it are hatched, and their areas said. Default: no. */
  readonly overlap?: boolean;
  /** The check of what was drawn: its dots, and what is to be corrected. */
  readonly check?: DrawnCheck;
}

/** All of a plan's picture, from the eyes up to the dots; `beneathDots` may be hidden by a dot. */
export function planLayers(
  plan: BrowPlan,
  box: Box,
  brush: Brush,
  { overlap = false, check }: AlsoShown = {},
  beneathDots: readonly Layer[] = [],
): readonly Layer[] {
  const { face, dots, measures, choices } = plan;
  const rooms = eachSide((side) => eyeRoom(face[side]));
  const highest = Math.max(...SIDES.map((side) => dots[side].upperArch[1]));
  const lowest = Math.min(...SIDES.map((side) => face[side].alare[1]));
  const rise = (MIDLINE_RISE * brush.view.size) / brush.view.millimetre;
  return [
    ...SIDES.map((side) => eyeLayer(face[side], brush)),
    ...SIDES.map((side) => eyeRoomLayer(rooms[side], brush)),
    midlineLayer(
      { top: highest + rise, bottom: lowest - 2, name: label(brush.words, "line-midline") },
      brush,
    ),
    ...(overlap ? SIDES.map((side) => overlapLayer(plan, side, brush)) : []),
    ...SIDES.map((side) => grownLayer(face, side, brush)),
    ...SIDES.map((side) => lengthsLayer(dots[side], measures[side], side, brush)),
    ...SIDES.map((side) => guidesLayer(plan, side, rooms[side], brush)),
    landmarksLayer(face, box, brush),
    ...SIDES.map((side) => plannedBrowLayer(dots[side], side, choices.shape, brush)),
    findingsLayer(plan, brush),
    ...beneathDots,
    ...SIDES.map((side) => dotsLayer(dots[side], side, "planned", brush)),
    pinsLayer(plan, brush),
    ...(check === undefined ? [] : [checkLayer(plan, check, brush)]),
    verdictLayer(plan, box, brush),
    ...SIDES.map((side) => guessNameLayer(face, side, brush)),
  ];
}

/** How far the midline rises above the higher arch, in steps. */
const MIDLINE_RISE = 10.5;

/** Room about the brows, eyes and nose, in steps. */
const MARGIN = { top: 28, right: 19.5, bottom: 9, left: 19.5 };

/**
 * The part of the picture that holds both brows, the eyes and the nose, with room for what is written: two lines
 * above, which grow with their letters.
 */
export function faceBox({ face, dots }: BrowPlan, view: View): Box {
  const box = boxAround(
    SIDES.flatMap((side) => {
      const { endocanthion, exocanthion, alare, brow } = face[side];
      const points = [
        endocanthion,
        exocanthion,
        alare,
        ...brow.upper,
        ...Object.values(dots[side]),
      ];
      return points.map(view.place);
    }),
  );
  const grown = 2 * LINE_HEIGHT * (typeSize("label", view) / view.size - TYPE_SIZES.label);
  return withMargin(box, { ...MARGIN, top: MARGIN.top + grown }, view.size);
}
