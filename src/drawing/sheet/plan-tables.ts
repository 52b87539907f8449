import { MEASURE_NAMES } from "../../landmarks/internal.js";
import {
  type BrowPlan,
  type DotDeviation,
  type DrawnCheck,
  type MeasureDeviation,
  type PlannedDots,
  workSteps,
} from "../../mapping/index.js";
import type { Block } from "./block.js";
import { AXES, CHECK_HEAD, READINGS_HEAD, STEPS_HEAD } from "./words.js";
import { type Column, figureColumns, type Sheet, table, tableRow } from "./text-blocks.js";
import { changeWithUncertainty, decimal, figureWords, withUncertainty } from "../canvas/figures.js";
import type { Length } from "../../units/index.js";
import { element } from "../canvas/svg.js";
import { DOTS } from "../../landmarks/index.js";
import { placeOnSide } from "../../symmetry/index.js";
import { say } from "../../words/index.js";
import { fill } from "../../words/internal.js";

/** Name; grows and planned, right and left; difference; decision. */
const READINGS_COLUMNS: readonly Column[] = figureColumns([50, 23, 23, 23, 23, 24, 22]);

/** What is read on both brows as they grow and as planned, how the plan's sides differ, and what that means. */
export function readingsTable(plan: BrowPlan, sheet: Sheet): readonly Block[] {
  const { measures, naturalMeasures, comparison } = plan;
  const rows = MEASURE_NAMES.flatMap((name): readonly (readonly string[])[] => {
    const readings = [
      naturalMeasures.right[name],
      measures.right[name],
      naturalMeasures.left[name],
      measures.left[name],
    ];
    if (readings.every((reading) => reading === undefined)) return [];
    const { text, decimals } = figureWords(name);
    const compared = comparison.differences.find(({ measure }) => measure === name);
    return [
      [
        text,
        ...[...readings, compared?.difference].map((reading) =>
          reading === undefined ? "–" : withUncertainty(reading, decimals),
        ),
        compared?.decision?.outcome ?? "–",
      ],
    ];
  });
  return table(READINGS_HEAD, rows, READINGS_COLUMNS, sheet);
}

/** Room for the tick; what to do; where the ruler lies; what it reads. */
const STEPS_COLUMNS: readonly Column[] = [
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
  const rows = workSteps(plan, { rulerZero }).map((step) => {
    const { check } = step;
    const read =
      check === undefined
        ? ["", ""]
        : [
            `${say(check.from)} → ${say(check.to)}`,
            withUncertainty({ value: check.reading, u: check.u }, 1),
          ];
    return withTick(tableRow(["", say(step), ...read], STEPS_COLUMNS, sheet), sheet);
  });
  return [tableRow(STEPS_HEAD, STEPS_COLUMNS, sheet, true), ...rows];
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

/** Name; planned; drawn; difference; decision. */
const CHECK_COLUMNS: readonly Column[] = figureColumns([70, 26, 32, 32, 28]);

/** Everything that was drawn against its plan: dots by axis, then measures. */
export function checkTable(
  plan: PlannedDots,
  { dots, measures }: DrawnCheck,
  sheet: Sheet,
): readonly Block[] {
  const rows = [
    ...dots.flatMap((deviation) => dotRows(plan.dots, deviation)),
    ...measures.map(measureRow),
  ];
  return table(CHECK_HEAD, rows, CHECK_COLUMNS, sheet);
}

function dotRows(
  planned: PlannedDots["dots"],
  { side, dot, outward, up }: DotDeviation,
): readonly (readonly string[])[] {
  const { distance, height } = placeOnSide(planned[side][dot], side);
  return [
    { name: AXES.outward, planned: distance, deviation: outward },
    { name: AXES.up, planned: height, deviation: up },
  ].map(({ name, planned, deviation: { difference, decision } }) => [
    fill(name, { side, dot: DOTS[dot].words }),
    decimal(planned, 1),
    withUncertainty({ value: planned + difference.value, u: difference.u }, 1),
    changeWithUncertainty(difference),
    decision?.outcome ?? "–",
  ]);
}

function measureRow(deviation: MeasureDeviation): readonly string[] {
  const { side, measure, planned, drawn, difference, decision } = deviation;
  const { text, decimals } = figureWords(measure);
  return [
    side === undefined ? text : `${side} ${text}`,
    decimal(planned, decimals),
    withUncertainty(drawn, decimals),
    changeWithUncertainty(difference, decimals),
    decision?.outcome ?? "–",
  ];
}
