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
import { type Column, figureColumns, inwards, type Sheet, table, tableRow } from "./text-blocks.js";
import {
  changeWithUncertainty,
  figureWords,
  lengths,
  showsNothing,
  withUncertainty,
} from "../canvas/figures.js";
import type { Decision, Length, Measured } from "../../units/index.js";
import { grownWord } from "../layers/brow-layers.js";
import { element } from "../canvas/svg.js";
import { SIDES } from "../../units/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import { say, type Words } from "../../words/index.js";
import { decimal, label } from "../../words/internal.js";

/** Name; grows and planned, right and left; difference; decision. */
const READINGS_COLUMNS: readonly Column[] = figureColumns([50, 23, 23, 23, 23, 24, 22]);

/** What is read on both brows as they grow and as planned, how the plan's sides differ, and what that means. */
export function readingsTable(plan: BrowPlan, sheet: Sheet): readonly Block[] {
  const { measures, naturalMeasures, comparison } = plan;
  const { words } = sheet.brush;
  const rows = MEASURE_NAMES.flatMap((name): readonly (readonly string[])[] => {
    const readings = [
      naturalMeasures.right[name],
      measures.right[name],
      naturalMeasures.left[name],
      measures.left[name],
    ];
    const { text, figure, held } = figureWords(name, words);
    const isHeld = (reading: Measured): boolean => showsNothing(reading.u, figure);
    if (readings.every((reading) => reading === undefined || isHeld(reading))) return [];
    const compared = comparison.differences.find(({ measure }) => measure === name);
    // Sides that are alike by construction were not compared.
    const isSame =
      compared === undefined ||
      (isHeld(compared.difference) && showsNothing(compared.difference.value, figure));
    return [
      [
        text,
        ...readings.map((reading) => {
          if (reading === undefined) return "–";
          return isHeld(reading) ? held(reading.value) : withUncertainty(reading, figure, words);
        }),
        isSame ? "–" : changeWithUncertainty(compared.difference, figure, words),
        isSame ? "–" : outcomeIn(compared.decision, words),
      ],
    ];
  });
  const head = [
    "",
    ...SIDES.flatMap((side) => [
      label(words, `column-${grownWord(plan.face, side)}`, { side }),
      label(words, "column-of-plan", { side }),
    ]),
    label(words, "column-left-less-right"),
    label(words, "column-decision"),
  ];
  return table(head, rows, READINGS_COLUMNS, sheet);
}

/** Room for the tick; number; what to do; where the ruler lies; what it reads. */
const STEPS_COLUMNS: readonly Column[] = [
  { share: 5, from: "start" },
  { share: 7, from: "start" },
  { share: 84, from: "start" },
  { share: 66, from: "start" },
  { share: 26, from: "end" },
];

/** Side of the square to tick, in millimetres. */
const TICK = 2.4;

/** The steps of work, each with a square to tick and with the ruler's reading that checks it. */
export function stepsTable(
  plan: BrowPlan,
  rulerZero: Length<"mm">,
  sheet: Sheet,
): readonly Block[] {
  const { words } = sheet.brush;
  const head = [
    "",
    "",
    label(words, "column-step"),
    label(words, "column-check"),
    label(words, "column-reads"),
  ];
  const named = tableRow(head, STEPS_COLUMNS, sheet, true);
  const rows = workSteps(plan, { rulerZero }).flatMap(({ checks, ...step }, index) => {
    const read = checks.map(({ laid, reading, u }): readonly string[] => [
      say(laid, words),
      reading === undefined || u === undefined
        ? ""
        : withUncertainty({ value: reading, u }, lengths(words), words),
    ]);
    const [first = [], ...others] = read;
    const cells = [
      ["", `${decimal(index + 1, 0, words)}.`, say(step, words), ...first],
      ...others.map((other) => ["", "", "", ...other]),
    ];
    // Neither what to do nor the last of its checks goes to a page alone.
    return cells.map((row, at): Block => {
      const drawn = tableRow(row, STEPS_COLUMNS, sheet);
      const block = {
        ...drawn,
        head: named,
        leads: at === 0 ? others.length > 0 : at === others.length - 1,
      };
      return at === 0 ? withTick(block, sheet) : block;
    });
  });
  return [named, ...rows];
}

function withTick(row: Block, sheet: Sheet): Block {
  return {
    ...row,
    drawnAt: (left, top) => [
      ...row.drawnAt(left, top),
      element("rect", {
        x: inwards(left, sheet)(0.5, TICK),
        y: top + 0.8,
        width: TICK,
        height: TICK,
        fill: "none",
        stroke: sheet.brush.palette.ink,
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
  const { words } = sheet.brush;
  const rows = [
    ...dots.flatMap((deviation) => dotRows(plan.dots, deviation, words)),
    ...measures.map((deviation) => measureRow(deviation, words)),
  ];
  const head = [
    "",
    label(words, "column-planned"),
    label(words, "column-drawn"),
    label(words, "column-difference"),
    label(words, "column-decision"),
  ];
  return table(head, rows, CHECK_COLUMNS, sheet);
}

function dotRows(
  planned: PlannedDots["dots"],
  { side, dot, outward, up }: DotDeviation,
  words: Words,
): readonly (readonly string[])[] {
  const { distance, height } = placeOnSide(planned[side][dot], side);
  const axes = [
    { axis: "axis-outward", planned: distance, deviation: outward },
    { axis: "axis-up", planned: height, deviation: up },
  ] as const;
  return axes.map(({ axis, planned, deviation: { difference, decision } }) => [
    label(words, axis, { side, dot }),
    lengths(words)(planned),
    withUncertainty({ value: planned + difference.value, u: difference.u }, lengths(words), words),
    changeWithUncertainty(difference, lengths(words), words),
    outcomeIn(decision, words),
  ]);
}

function outcomeIn(decision: Decision | undefined, { terms }: Words): string {
  return decision === undefined ? "–" : terms.outcomes[decision.outcome];
}

function measureRow(deviation: MeasureDeviation, words: Words): readonly string[] {
  const { side, measure, planned, drawn, difference, decision } = deviation;
  const { text, figure } = figureWords(measure, words);
  return [
    side === undefined ? text : label(words, "of-side", { side, what: text }),
    figure(planned),
    withUncertainty(drawn, figure, words),
    changeWithUncertainty(difference, figure, words),
    outcomeIn(decision, words),
  ];
}
