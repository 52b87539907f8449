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
import type { Brush } from "../canvas/brush.js";
import { type Column, table } from "./text-blocks.js";
import { changeWithUncertainty, decimal, figureWords, withUncertainty } from "../canvas/words.js";

/** Name; planned; drawn; difference; decision. */
const COLUMNS: readonly Column[] = [70, 26, 32, 32, 28].map((share, index) => ({
  share,
  from: index === 0 ? "left" : "right",
}));

/** Everything that was drawn against its plan: dots by axis, then measures. */
export function checkTable(
  plan: PlannedDots,
  { dots, measures }: DrawnCheck,
  width: number,
  brush: Brush,
): readonly Block[] {
  const head = ["", "planned", "drawn", "drawn − planned", "decision"];
  const rows = [
    ...dots.flatMap((deviation) => dotRows(plan.dots, deviation)),
    ...measures.map(measureRow),
  ];
  return table(head, rows, COLUMNS, width, brush);
}

function dotRows(
  planned: PlannedDots["dots"],
  { side, dot, outward, up }: DotDeviation,
): readonly (readonly string[])[] {
  const { distance, height } = placeOnSide(planned[side][dot], side);
  return [
    { of: "from the midline", planned: distance, deviation: outward },
    { of: "height", planned: height, deviation: up },
  ].map(({ of, planned, deviation: { difference, decision } }) => [
    `${side} ${DOTS[dot].words}, ${of}`,
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
