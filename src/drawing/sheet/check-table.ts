import { DOTS } from "../../landmarks/index.js";
import type {
  DotDeviation,
  DrawnCheck,
  PlannedDots,
  MeasureDeviation,
} from "../../mapping/index.js";
import { placeOnSide } from "../../symmetry/index.js";
import { measured } from "../../units/index.js";
import type { Block } from "./block.js";
import { fill } from "../../units/internal.js";
import { AXES, CHECK_HEAD } from "./words.js";
import { type Column, figureColumns, type Sheet, table } from "./text-blocks.js";
import { changeWithUncertainty, decimal, figureWords, withUncertainty } from "../canvas/figures.js";

/** Name; planned; drawn; difference; decision. */
const COLUMNS: readonly Column[] = figureColumns([70, 26, 32, 32, 28]);

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
  return table(CHECK_HEAD, rows, COLUMNS, sheet);
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
    withUncertainty(measured<number>(planned + difference.value, difference.u), 1),
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
