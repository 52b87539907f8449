import type { PlannedDots } from "../../mapping/index.js";
import type { Side } from "../../units/index.js";
import type { Spot } from "../canvas/box.js";
import { plannedSpots } from "./brow-layers.js";
import { type Brush, pathData, strokeGroup } from "../canvas/brush.js";
import { hatch, type Hatching } from "../canvas/hatch.js";
import type { Layer } from "../canvas/layer.js";
import { placed } from "../canvas/view.js";

/** What is hatched: hair outside the plan, skin inside it. */
export type HatchRole = "remove" | "fill";

/** Strokes that lean opposite ways, so that they differ in black alone. */
const LEAN: Readonly<Record<HatchRole, Spot>> = {
  remove: [Math.SQRT1_2, Math.SQRT1_2],
  fill: [Math.SQRT1_2, -Math.SQRT1_2],
};

/** From stroke to stroke, in steps. */
const APART = 1.1;

/** How a role is hatched in a picture. */
export function hatchingOf(role: HatchRole, size: number): Hatching {
  return { direction: LEAN[role], apart: APART * size };
}

/** Hair outside the plan and skin inside it, hatched, where the natural lower border is known. */
export function overlapLayer(plan: PlannedDots, side: Side, brush: Brush): Layer {
  const { upper, lower } = plan.face[side].brow;
  if (lower === undefined) return { elements: [] };
  const natural = placed([...upper, ...[...lower].reverse()], brush.view);
  const planned = plannedSpots(plan.dots[side], plan.choices.shape, brush);
  return {
    elements: [
      hatched("remove", side, natural, planned, brush),
      hatched("fill", side, planned, natural, brush),
    ],
  };
}

function hatched(
  role: HatchRole,
  side: Side,
  inside: readonly Spot[],
  outside: readonly Spot[],
  brush: Brush,
): Layer["elements"][number] {
  const strokes = hatch(inside, outside, hatchingOf(role, brush.view.size));
  const data = strokes.map(({ from, to }) => pathData([from, to])).join("");
  // Without the edge that sets lines off from a photo: the hair between the strokes is to be seen.
  const plain = { ...brush, onPhoto: false };
  return strokeGroup(role, `${role} ${side}`, data === "" ? [] : [data], plain);
}
