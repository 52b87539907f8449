import type { PlannedDots } from "../../mapping/index.js";
import { isHair } from "../../mapping/internal.js";
import type { Side } from "../../units/index.js";
import type { Spot } from "../canvas/box.js";
import { plannedSpots } from "./brow-layers.js";
import { type Brush, pathData, strokeGroup } from "../canvas/brush.js";
import { hatch } from "../canvas/hatch.js";
import type { Layer } from "../canvas/layer.js";
import { placed } from "../canvas/view.js";

/** What is hatched: hair outside the plan, skin inside it. */
export type HatchRole = "remove" | "fill";

/** Strokes that lean opposite ways, so that they differ in black alone. */
const LEAN: Readonly<Record<HatchRole, Spot>> = {
  remove: [Math.SQRT1_2, Math.SQRT1_2],
  fill: [Math.SQRT1_2, -Math.SQRT1_2],
};

const APART = 1.1;

/** The strokes with which a role is hatched, inside one closed outline and outside of another. */
export function hatchData(
  role: HatchRole,
  inside: readonly Spot[],
  outside: readonly Spot[],
  { view }: Brush,
): string {
  const strokes = hatch(inside, outside, { direction: LEAN[role], apart: APART * view.size });
  return strokes.map(({ from, to }) => pathData([from, to])).join("");
}

/** Hair outside the plan and skin inside it, hatched, where both borders of the hair are known. */
export function overlapLayer(plan: PlannedDots, side: Side, brush: Brush): Layer {
  const { upper, lower } = plan.face[side].brow;
  if (lower === undefined || !isHair(plan.face, side)) return { elements: [] };
  const natural = placed([...upper, ...[...lower].reverse()], brush.view);
  const planned = plannedSpots(plan.dots[side], plan.choices.shape, brush);
  return {
    elements: [
      hatched("remove", `remove ${side}`, [[natural, planned]], brush),
      hatched("fill", `fill ${side}`, [[planned, natural]], brush),
    ],
  };
}

/** What lies inside one closed outline and outside of another, for each such pair. */
export function hatched(
  role: HatchRole,
  named: string,
  areas: readonly (readonly [inside: readonly Spot[], outside: readonly Spot[]])[],
  brush: Brush,
): Layer["elements"][number] {
  const data = areas.map(([inside, outside]) => hatchData(role, inside, outside, brush));
  // Without the edge that sets lines off from a photo: the hair between the strokes is to be seen.
  const plain = { ...brush, edged: false };
  return strokeGroup(role, named, data.filter(Boolean), plain);
}
