import { MEASURE_NAMES } from "../../landmarks/internal.js";
import {
  type BrowPlan,
  type DotDeviation,
  type DrawnCheck,
  type MeasureDeviation,
  type PlannedDots,
  type RulerCheck,
  type WorkStep,
  workSteps,
} from "../../mapping/index.js";
import {
  changeWithUncertainty,
  figureWords,
  lengths,
  showsNothing,
  withUncertainty,
} from "../canvas/figures.js";
import { element, type SvgElement } from "../canvas/svg.js";
import { grownWord } from "../layers/brow-layers.js";
import { placeOnSide } from "../../symmetry/index.js";
import type { Decision, Length, Measured, Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { say, type Words } from "../../words/index.js";
import { decimal, label } from "../../words/internal.js";

/** A table of figures behind their names, whose head browsers repeat on every page that it runs on to. */
function figuresTable(head: readonly string[], rows: readonly (readonly string[])[]): SvgElement {
  const row = (name: "th" | "td", cells: readonly string[]): SvgElement =>
    element(
      "tr",
      {},
      cells.map((text, index) => element(name, index === 0 ? {} : { class: "number" }, [text])),
    );
  return element("div", { class: "wide" }, [
    element("table", { class: "figures" }, [
      element("thead", {}, [row("th", head)]),
      element(
        "tbody",
        {},
        rows.map((cells) => row("td", cells)),
      ),
    ]),
  ]);
}

/** What is read on both brows as they grow and as planned, how the plan's sides differ, and what that means. */
export function readingsTable(plan: BrowPlan, words: Words): SvgElement {
  const { measures, naturalMeasures, comparison } = plan;
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
  return figuresTable(head, rows);
}

/** The sides as columns, so that each stands beneath its side of the face whichever way the page is read. */
export function inReadingOrder({ direction }: Words): readonly Side[] {
  return direction === "rtl" ? [...SIDES].reverse() : SIDES;
}

/** A step with its number. */
type Numbered = WorkStep & { readonly number: number };

/** More rows than these may be torn apart by a page's end. */
const MOST_TOGETHER = 6;

/**
 * The steps of work in the order of their numbers, each with a square to tick and with the ruler's readings that
 * check it; those of a side stand beneath that side of the face, whichever way the page is read.
 */
export function stepsTable(plan: BrowPlan, rulerZero: Length<"mm">, words: Words): SvgElement {
  const sides = inReadingOrder(words);
  const number = { class: "number" };
  const steps = workSteps(plan, { rulerZero }).map((step, index) => ({
    ...step,
    number: index + 1,
  }));
  const head = sides.flatMap((side) => [
    element("th", {}, [label(words, `corner-${side}`)]),
    element("th", number, [label(words, "column-reads")]),
  ]);
  const stepCell = (step: Numbered | undefined): SvgElement =>
    element(
      "td",
      { colspan: 2, class: "step" },
      step === undefined
        ? []
        : [
            element("span", { class: "tick" }),
            `${decimal(step.number, 0, words)}. ${say(step, words)}`,
          ],
    );
  const checkCells = (check: RulerCheck | undefined): readonly SvgElement[] => [
    element("td", {}, check === undefined ? [] : [say(check.laid, words)]),
    element("td", number, [readingOf(check, words)]),
  ];
  return element("table", { class: "work" }, [
    element("thead", {}, [tableRow(head)]),
    ...besideEachOther(steps).map((pair) => {
      const across = sides.flatMap((side) => pair[side]?.checks.filter(isAcross) ?? []);
      const [first, second] = sides.map((side) =>
        pair[side]?.checks.filter((one) => !isAcross(one)),
      );
      const most = Math.max(first?.length ?? 0, second?.length ?? 0);
      return element("tbody", { class: most > MOST_TOGETHER ? "long" : undefined }, [
        tableRow(sides.map((side) => stepCell(pair[side]))),
        ...across.map(({ laid }) => tableRow([element("td", { colspan: 4 }, [say(laid, words)])])),
        ...Array.from({ length: most }, (_, row) =>
          tableRow([first, second].flatMap((checks) => checkCells(checks?.[row]))),
        ),
      ]);
    }),
  ]);
}

/** Whether one ruler lies across both brows, and shows no figure. */
function isAcross({ reading }: RulerCheck): boolean {
  return reading === undefined;
}

function tableRow(cells: readonly SvgElement[]): SvgElement {
  return element("tr", {}, cells);
}

function readingOf(check: RulerCheck | undefined, words: Words): string {
  const { reading, u } = check ?? {};
  if (reading === undefined || u === undefined) return "";
  return withUncertainty({ value: reading, u }, lengths(words), words);
}

/** Steps about the same dot of both sides in one row, the others in one of their own. */
function besideEachOther(
  steps: readonly Numbered[],
): readonly Readonly<Partial<Record<Side, Numbered>>>[] {
  const rows: Partial<Record<Side, Numbered>>[] = [];
  let before: Numbered | undefined;
  for (const step of steps) {
    const row = rows[rows.length - 1];
    const isPair =
      before !== undefined && before.side !== step.side && isAboutTheSame(before, step);
    if (isPair && row !== undefined) row[step.side] = step;
    else rows.push({ [step.side]: step });
    before = isPair ? undefined : step;
  }
  return rows;
}

function isAboutTheSame(one: WorkStep, other: WorkStep): boolean {
  return (
    one.stage === other.stage &&
    one.values.dot === other.values.dot &&
    one.values.station === other.values.station
  );
}

/** Everything that was drawn against its plan: dots by axis, then measures. */
export function checkTable(
  plan: PlannedDots,
  { dots, measures }: DrawnCheck,
  words: Words,
): SvgElement {
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
  return figuresTable(head, rows);
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
