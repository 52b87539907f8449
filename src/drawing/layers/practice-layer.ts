import { pointOnLine } from "../../geometry/index.js";
import type { Dot } from "../../landmarks/index.js";
import type { BrowPlan } from "../../mapping/index.js";
import { type FlatPoint, flatPoint, length, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { label } from "../../words/internal.js";
import type { Box } from "../canvas/box.js";
import { type Brush, pathData, strokeGroup, stretches } from "../canvas/brush.js";
import type { Layer } from "../canvas/layer.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { placed } from "../canvas/view.js";
import { landmarksLayer, midlineLayer } from "./face-layers.js";

/** The dots that lie on each guide. */
const DOTS_ON: Readonly<Record<"start" | "arch" | "tail", readonly Dot[]>> = {
  start: ["upperStart", "lowerStart"],
  arch: ["upperArch", "lowerArch"],
  tail: ["tailEnd"],
};

/** How far lines rise above the higher arch, and how far the level reaches past the outer eye corners, in mm. */
const RISE = 12;
const PAST_CORNERS = 12;

/** What is given to whoever maps without a brow: midline, level, landmarks, guides with the names of their dots. */
export function practiceLayers(plan: BrowPlan, box: Box, brush: Brush): readonly Layer[] {
  const { face, dots } = plan;
  // As high on both sides: the end of a line tells nothing of its dot.
  const top = Math.max(...SIDES.map((side) => dots[side].upperArch[1])) + RISE;
  const lowest = Math.min(...SIDES.map((side) => face[side].alare[1]));
  return [
    midlineLayer({ top, bottom: lowest - 2, name: label(brush.words, "line-midline") }, brush),
    levelLayer(plan, brush),
    ...SIDES.flatMap((side) => guideLayers(plan, side, top, brush)),
    landmarksLayer(face, box, brush),
  ];
}

function levelLayer({ face }: BrowPlan, brush: Brush): Layer {
  const line = SIDES.map((side) => {
    const [x] = face[side].exocanthion;
    return brush.view.place(flatPoint<"mm">(x + Math.sign(x) * PAST_CORNERS, 0));
  });
  return {
    elements: [strokeGroup("ruler", "level", [pathData(line)], brush)],
    strokes: stretches(line),
  };
}

function guideLayers(
  { guides }: BrowPlan,
  side: Side,
  top: number,
  brush: Brush,
): readonly Layer[] {
  const { view, palette, words } = brush;
  return guides[side].map(({ mark, line }): Layer => {
    const at = (height: number): FlatPoint<"mm"> =>
      pointOnLine(line, length((height - line.through[1]) / line.direction[1]));
    const spots = placed([line.through, at(top)], view);
    return {
      elements: [strokeGroup(mark, `guide ${mark} ${side}`, [pathData(spots)], brush)],
      labels: [
        {
          text: DOTS_ON[mark].map((dot) => words.terms.dots[dot]).join(words.separator),
          at: view.place(at(top)),
          orAt: [0.9, 0.8, 0.7].map((share) => view.place(at(share * top))),
          towards: [
            [0, -1],
            [side === "left" ? 1 : -1, 0],
          ],
          size: TYPE_SIZES.label * view.size,
          gap: 0.9 * view.size,
          weight: "bold",
          colour: palette.strokes[mark],
        },
      ],
      strokes: stretches(spots),
    };
  });
}
