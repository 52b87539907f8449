import {
  type BrowPlan,
  type CompleteDots,
  drawPlan,
  naturalDots,
  type Pin,
  planBrows,
  type PlannableFace,
  type Point,
  type Side,
} from "brow-geometry";
import { carryBrow } from "brow-geometry/symmetry";
import { DOT_NAMES, mapBrow } from "../../src/landmarks/internal.js";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { type SyntheticFace, syntheticFace } from "../support/synthetic-face.js";
import { figure } from "./figure.js";

/** Both ways to carry the left brow to the right side of one crooked face. */
export function carryFigure(): string {
  const face = crookedFace();
  const { dots, skin } = planBrows(face, { lead: "left" });
  const leading = { side: "left", dots: dots.left } as const;
  const { upperStart: start } = naturalDots(face.right.brow).dots;
  const ways = [
    ["mirror: reflected across the midline", carryBrow(leading, { method: "mirror" })],
    [
      "measure: by ruler, from the right brow's own start",
      carryBrow(leading, { method: "measure", start, skin }),
    ],
  ] as const;
  return figure(
    "Two ways to carry the left brow to the right side of a crooked face",
    1,
    ways.map(([caption, carried]) => {
      const pins = [...pinsAt(leading.dots, "left"), ...pinsAt(carried.dots, "right")];
      return {
        caption,
        drawing: drawPlan(withoutPins(planBrows(face, { pins })), { title: caption }),
      };
    }),
  );
}

/** A face whose right half is wider, and whose right brow starts farther out and grows lower. */
function crookedFace(): PlannableFace {
  const wider = mapFace(syntheticFace(), ([x, y]: Point<"mm">) =>
    flatPoint<"mm">(x < 0 ? 1.08 * x : x, y),
  ) as SyntheticFace;
  const brow = mapBrow(wider.right.brow, ([x, y]) => flatPoint<"mm">(x - 2.5, y - 2));
  return { ...wider, right: { ...wider.right, brow } };
}

/** The dots stand where they were carried to: no artist has pinned them. */
function withoutPins(plan: BrowPlan): BrowPlan {
  const reasons = plan.reasons.filter(({ code }) => code !== "pinned");
  return { ...plan, reasons, choices: { ...plan.choices, pins: [] } };
}

function pinsAt(dots: CompleteDots<"mm">, side: Side): readonly Pin[] {
  return DOT_NAMES.map((dot) => ({ side, dot, at: flatPoint(dots[dot][0], dots[dot][1]) }));
}
