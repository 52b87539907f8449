import { dotProduct } from "../geometry/internal.js";
import { type Face, landmarkUncertainty } from "../landmarks/index.js";
import { hasDepth, measured, type Point, type Polyline, type Side } from "../units/index.js";
import { SIDES } from "../units/internal.js";
import type { Capture } from "./capture.js";
import { axesInPicture, axesInSpace, type FacialAxes, middleOf, wayFrom } from "./facial-axes.js";
import { USUAL_WIDTH } from "./face-size.js";
import type { Reading } from "./finding.js";

/** Whether the brows stand where they stood in the baseline. */
export function browReadings({ face, baseline }: Capture): readonly Reading[] {
  if (baseline === undefined) {
    return [{ check: "browHeight", measured: undefined, need: "baseline" }];
  }
  const u = Math.hypot(heightU(face), heightU(baseline));
  return SIDES.map((side) => {
    const rise = riseOver(baseline, face, side);
    return { check: "browHeight", measured: rise === undefined ? rise : measured(rise, u), side };
  });
}

/** How much higher a brow stands, in millimetres on a face as wide as usual. */
function riseOver(before: Face<"px">, now: Face<"px">, side: Side): number | undefined {
  // In space a raised chin does not pass for a lowered brow; both captures are read the same way.
  const inSpace = [before, now].map((face) => browHeight(face, side, axesInSpace(face), true));
  const [from, to] = inSpace.includes(undefined)
    ? [before, now].map((face) => browHeight(face, side, axesInPicture(face), false))
    : inSpace;
  return from === undefined || to === undefined ? undefined : to - from;
}

function browHeight(
  face: Face<"px">,
  side: Side,
  axes: FacialAxes | undefined,
  deep: boolean,
): number | undefined {
  const { right, left } = face;
  const level = middleOf(right.endocanthion, left.endocanthion);
  const border = face[side].brow?.upper;
  if (axes === undefined || level === undefined || border === undefined) return undefined;
  if (right.exocanthion === undefined || left.exocanthion === undefined) return undefined;
  if (deep && ![level, ...border].every(hasDepth)) return undefined;
  const width = dotProduct(wayFrom(right.exocanthion, left.exocanthion), axes.across);
  return (USUAL_WIDTH * meanHeight(border, level, axes)) / width;
}

/** Mean height of a line above a level, every stretch counting by its way across the face. */
function meanHeight(line: Polyline<"px">, level: Point<"px">, { across, up }: FacialAxes): number {
  const heights = line.map((point) => dotProduct(wayFrom(level, point), up));
  let [sum, width] = [0, 0];
  heights.forEach((height, index) => {
    const [from, to, before] = [line[index - 1], line[index], heights[index - 1]];
    if (from === undefined || to === undefined || before === undefined) return;
    const stretch = Math.abs(dotProduct(wayFrom(from, to), across));
    sum += (stretch * (before + height)) / 2;
    width += stretch;
  });
  return width > 0 ? sum / width : (heights[0] ?? 0);
}

/** Standard uncertainty of a brow's height in one capture: the brow's points move together. */
function heightU(face: Face<"px">): number {
  const cornerU = landmarkUncertainty(face, "endocanthion") / Math.SQRT2;
  return Math.hypot(landmarkUncertainty(face, "brow"), cornerU);
}
