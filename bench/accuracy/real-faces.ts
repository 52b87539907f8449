import { ENGLISH, GUIDES, WORKING_TOLERANCES } from "brow-geometry";
import type { MeasureName } from "brow-geometry/landmarks";
import { toleranceNameOf } from "../../src/landmarks/internal.js";
import { decideUnder, normalQuantile } from "../../src/units/internal.js";
import { londonFaces, type MeasuredMarkup } from "../../tests/support/london-faces.js";
import { asFound, type ComparedReading, EVERY_GUIDE, heldOut } from "./held-out.js";
import { table } from "./page.js";

const COVERAGE = normalQuantile(0.975);
/** Every tenth person is unseen at a time. */
const FOLDS = 10;
const MARKUPS: { readonly [Name in MeasuredMarkup]: string } = {
  "mesh-478": "mesh",
  "points-68": "68 points",
};

/** What became of one reading over all faces. */
interface Tally {
  /** Share of the intervals that hold what was drawn by hand, whose own uncertainty counts too. */
  readonly held: number;
  readonly bias: number;
  /** Median of the standard uncertainties stated. */
  readonly u: number;
  /** How many times as wide intervals would have to be for 95 % of them to hold it. */
  readonly factor: number;
}

/** Whether an interval holds what was drawn by hand. */
export function isHeld({ found, drawn }: ComparedReading): boolean {
  return Math.abs(found.value - drawn.value) <= COVERAGE * Math.hypot(found.u, drawn.u);
}

/** How often what a plan states of faces that its table has not seen holds what a hand drew on them. */
export function realFacesTable(): string {
  const faces = londonFaces();
  const columns = (Object.keys(MARKUPS) as MeasuredMarkup[]).map((markup) => {
    const found = asFound(faces, markup);
    console.error(`${markup}: as found`);
    const corrected = Array.from({ length: FOLDS }, (_, fold) => {
      const unseen = faces.filter((_face, index) => index % FOLDS === fold);
      console.error(`${markup}: fold ${fold + 1} of ${FOLDS}`);
      return heldOut(faces, unseen, markup, EVERY_GUIDE);
    }).flat();
    return { markup, found, corrected };
  });
  const groups = GROUPS.map((group) => {
    const names = [...new Set(columns.flatMap(({ corrected }) => namesIn(corrected, group)))];
    const rows = names.map((name) => [
      wordsOf(name, group),
      ...columns.flatMap(({ found, corrected }) => {
        const [before, after] = [found, corrected].map((all) =>
          tallyOf(all.filter((one) => one.group === group && one.name === name)),
        );
        if (after === undefined) return ["–", "–", "–", "–"];
        return [
          before === undefined ? "–" : percent(before.held),
          percent(after.held),
          `${signed(after.bias)} (${after.u.toPrecision(2)})`,
          after.factor.toFixed(2),
        ];
      }),
    ]);
    const header = columns.flatMap(({ markup }) =>
      ["as found", "corrected", "bias (u)", "factor"].map((what) => `${MARKUPS[markup]}: ${what}`),
    );
    return `${TITLES[group]}\n\n${table([group, ...header], rows)}`;
  });
  const pooled = columns.flatMap(({ markup, found, corrected }) =>
    [found, corrected].map((all, after) => [
      `${MARKUPS[markup]}, ${after === 0 ? "as found" : "corrected"}`,
      ...GROUPS.map((group) => {
        const tally = tallyOf(all.filter((one) => one.group === group));
        return tally === undefined ? "–" : percent(tally.held);
      }),
      claims(all),
    ]),
  );
  const header = ["held", ...GROUPS.map((group) => `${group}s`), "false decisions"];
  const outside = columns.flatMap(({ markup, corrected }) =>
    GROUPS.flatMap((group) =>
      [...new Set(namesIn(corrected, group))].flatMap((name) => {
        const tally = tallyOf(corrected.filter((one) => one.group === group && one.name === name));
        if (tally === undefined || (tally.held >= TARGET.least && tally.held <= TARGET.most))
          return [];
        const what = `${group} ${wordsOf(name, group)} (${MARKUPS[markup]})`;
        return [`${what}, ${percent(tally.held)}, factor ${tally.factor.toFixed(2)}`];
      }),
    ),
  );
  return [
    table(header, pooled),
    ...groups,
    `Outside of the target: ${outside.length === 0 ? "none" : outside.join("; ")}.`,
  ].join("\n\n");
}

/** What docs/accuracy.md promises. */
const TARGET = { least: 0.93, most: 0.97 };

const GROUPS = ["measure", "difference", "mark"] as const;

const TITLES = {
  measure: "Measures of natural brows, both sides together:",
  difference: "Differences between natural brows, left less right:",
  mark: "Marks that guides place on the leading brow:",
} as const;

function namesIn(all: readonly ComparedReading[], group: ComparedReading["group"]): string[] {
  return all.filter((one) => one.group === group).map(({ name }) => name);
}

function wordsOf(name: string, group: ComparedReading["group"]): string {
  const { marks, measures, rules } = ENGLISH.terms;
  if (group !== "mark") return measures[name as MeasureName];
  const [guide, measure] = name.split(".") as [keyof typeof GUIDES, MeasureName];
  return `${marks[GUIDES[guide].mark]} ${rules[guide]}: ${measure.endsWith("Height") ? "height" : "distance"}`;
}

/** Decisions of differences by proof, and how many of them the hand contradicts. */
function claims(all: readonly ComparedReading[]): string {
  const made = all.flatMap(({ group, measure, found, drawn }) => {
    if (group !== "difference" || measure === "startToStart") return [];
    const name = toleranceNameOf(measure);
    const [claim, truth] = [found, { ...drawn, u: 0 }].map(
      (value) => decideUnder(WORKING_TOLERANCES, name, value).decision?.outcome,
    );
    return claim === undefined || claim === "undecided" ? [] : [claim === truth];
  });
  return `${made.filter((isTrue) => !isTrue).length} of ${made.length}`;
}

function tallyOf(all: readonly ComparedReading[]): Tally | undefined {
  if (all.length === 0) return undefined;
  const off = all.map(({ found, drawn }) => found.value - drawn.value);
  const needed = all.map(
    ({ found, drawn }) =>
      Math.abs(found.value - drawn.value) / (COVERAGE * Math.hypot(found.u, drawn.u)),
  );
  return {
    held: all.filter(isHeld).length / all.length,
    bias: off.reduce((sum, one) => sum + one, 0) / off.length,
    u: quantile(
      all.map(({ found }) => found.u),
      0.5,
    ),
    factor: quantile(needed, 0.95),
  };
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}

function signed(value: number): string {
  const printed = Math.abs(value) < 0.1 ? Math.abs(value).toFixed(2) : Math.abs(value).toFixed(1);
  return `${value < 0 ? "−" : "+"}${printed}`;
}
