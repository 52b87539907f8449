import { type BrowPlan, workSteps } from "../../mapping/index.js";
import type { Length } from "../../units/index.js";
import type { Block } from "./block.js";
import { element } from "../canvas/svg.js";
import { STEPS_HEAD } from "./words.js";
import { type Column, type Sheet, tableRow } from "./text-blocks.js";
import { withUncertainty } from "../canvas/figures.js";

/** Room for the tick; what to do; where the ruler lies; what it reads. */
const COLUMNS: readonly Column[] = [
  { share: 6, from: "left" },
  { share: 90, from: "left" },
  { share: 66, from: "left" },
  { share: 26, from: "right" },
];

/** Side of the square to tick, in millimetres. */
const TICK = 2.4;

/** The steps of work, each with a square to tick and with the ruler's reading that checks it. */
export function stepsTable(
  plan: BrowPlan,
  rulerZero: Length<"mm">,
  sheet: Sheet,
): readonly Block[] {
  const rows = workSteps(plan, { rulerZero }).map(({ text, check }) => {
    const read =
      check === undefined
        ? ["", ""]
        : [`${check.from} → ${check.to}`, withUncertainty({ value: check.reading, u: check.u }, 1)];
    return withTick(tableRow(["", text, ...read], COLUMNS, sheet), sheet);
  });
  return [tableRow(STEPS_HEAD, COLUMNS, sheet, true), ...rows];
}

function withTick(row: Block, { brush }: Sheet): Block {
  return {
    ...row,
    drawnAt: (left, top) => [
      ...row.drawnAt(left, top),
      element("rect", {
        x: left + 0.5,
        y: top + 0.8,
        width: TICK,
        height: TICK,
        fill: "none",
        stroke: brush.palette.ink,
        "stroke-width": 0.2,
      }),
    ],
  };
}
