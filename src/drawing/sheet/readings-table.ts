import { MEASURE_NAMES } from "../../landmarks/internal.js";
import type { BrowPlan } from "../../mapping/index.js";
import type { Block } from "./block.js";
import { READINGS_HEAD } from "./words.js";
import { type Column, figureColumns, type Sheet, table } from "./text-blocks.js";
import { figureWords, withUncertainty } from "../canvas/figures.js";

/** Name; grows and planned, right and left; difference; decision. */
const COLUMNS: readonly Column[] = figureColumns([50, 23, 23, 23, 23, 24, 22]);

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
  return table(READINGS_HEAD, rows, COLUMNS, sheet);
}
