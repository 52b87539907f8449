/**
 * How often the intervals that the library states hold the truth: simulated people, photographed and
 * measured. Writes the tables of docs/accuracy.md: `npm run study:accuracy`. It takes long; one table
 * at a time with `npm run study:accuracy -- 10000 mistakes`.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { GeometryError, measured, mm } from "brow-geometry";
import { normalQuantile } from "../../src/units/internal.js";
import { format } from "prettier";
import { type Deviations, deviationsFrom } from "../../src/units/uncertainty/random.js";
import { archTable } from "./arches.js";
import { type Beliefs, estimate, PRIORS, type ScaledLengths, type ScaleKind } from "./estimate.js";
import { LENGTHS, type LengthName, lengthsOn } from "./lengths.js";
import { drawPerson, type Source, SOURCES, takePhoto } from "./people.js";
import { intoPage, table } from "./page.js";
import { realFacesTable } from "./real-faces.js";
import { limitTable, slopeTable } from "./slopes.js";

const SEED = 20_251;
const PEOPLE = Number(process.argv[2] ?? 10_000);
/** The one table to write anew, or all of them. */
const ONE_TABLE = process.argv[3];
const COVERAGE = normalQuantile(0.975);

/** What became of one length over all people. */
interface Tally {
  /** Share of the intervals that hold the truth. */
  readonly held: number;
  /** How many people have no answer: a guide that meets no brow, or only just. */
  readonly missing: number;
  /** Median of the standard uncertainties stated. */
  readonly u: number;
  /** Median error. */
  readonly bias: number;
}

type Tallies = { readonly [Name in keyof ScaledLengths]: Tally };

function study(source: Source, people: number, deviations: Deviations, beliefs: Beliefs): Tallies {
  const cases = new Map<string, { readonly error: number; readonly u: number }[]>();
  for (let person = 0; person < people; person += 1) {
    const who = drawPerson(deviations);
    const truth = lengthsOn(who.face, who.skin);
    const found = answered(() => estimate(takePhoto(who, source, deviations), beliefs));
    for (const [name, value] of Object.entries(found?.value ?? {})) {
      const actual = truth[name.slice(name.indexOf(".") + 1) as LengthName];
      const u = found?.u[name as keyof ScaledLengths];
      if (value === undefined || u === undefined || actual === undefined) continue;
      const soFar = cases.get(name) ?? [];
      soFar.push({ error: value - actual, u });
      cases.set(name, soFar);
    }
    if (person % 100 === 99) console.error(`${source.name}: ${person + 1} of ${people}`);
  }
  return Object.fromEntries(
    Array.from(cases, ([name, each]) => [
      name,
      {
        held: each.filter(({ error, u }) => Math.abs(error) <= COVERAGE * u).length / each.length,
        missing: people - each.length,
        u: median(each.map(({ u }) => u)),
        bias: median(each.map(({ error }) => error)),
      },
    ]),
  ) as Tallies;
}

/** What is estimated, where there is an answer: a guide may cease to meet a brow at the least change. */
function answered<Result>(work: () => Result): Result | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof GeometryError && error.code === "no-solution") return undefined;
    throw error;
  }
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** What docs/accuracy.md promises. */
const TARGET = { least: 0.935, most: 0.965 };

const KINDS: readonly ScaleKind[] = ["ruler", "iris"];

function coverageTable(): string {
  const columns = SOURCES.map((source, index) => ({
    source,
    tallies: study(source, PEOPLE, deviationsFrom(SEED + index), PRIORS),
  }));
  const header = columns.flatMap(({ source }) =>
    KINDS.map((kind) => `${source.name}; scale by ${kind}`),
  );
  const rows = (Object.keys(LENGTHS) as LengthName[]).map((name) => [
    LENGTHS[name],
    ...columns.flatMap(({ tallies }) =>
      KINDS.map((kind) => {
        const { held, u } = tallies[`${kind}.${name}`];
        return `${percent(held)} (${u.toFixed(2)})`;
      }),
    ),
  ]);
  const all = columns.flatMap(({ tallies }) => Object.values(tallies).map(({ held }) => held));
  const outside = columns.flatMap(({ source, tallies }) =>
    (Object.keys(LENGTHS) as LengthName[]).flatMap((name) =>
      KINDS.map((kind) => ({ name, kind, held: tallies[`${kind}.${name}`].held }))
        .filter(({ held }) => held < TARGET.least || held > TARGET.most)
        .map(
          ({ kind, held }) =>
            `${LENGTHS[name]} (${source.name}; scale by ${kind}), ${percent(held)}`,
        ),
    ),
  );
  const missing = columns.flatMap(({ tallies }) =>
    Object.values(tallies).map((one) => one.missing),
  );
  return [
    `${PEOPLE} people for each source. Share of 95 % intervals that hold the truth, and in brackets the median standard uncertainty stated, in millimetres.`,
    table(["length", ...header], rows),
    `Least ${percent(Math.min(...all))}, most ${percent(Math.max(...all))}. At most ${Math.max(...missing)} people for a length have none: a guide meets no brow.`,
    `Outside of the target: ${outside.length === 0 ? "none" : outside.join("; ")}.`,
  ].join("\n\n");
}

/** What a wrong belief does. */
const MISTAKES: readonly {
  readonly what: string;
  readonly source: number;
  readonly kind: ScaleKind;
  readonly beliefs: Beliefs;
}[] = [
  { what: "none", source: 0, kind: "iris", beliefs: PRIORS },
  {
    what: "iris taken as 12.2 mm",
    source: 0,
    kind: "iris",
    beliefs: { ...PRIORS, irisWidth: measured(mm(12.2), mm(0.42)) },
  },
  { what: "none", source: 1, kind: "iris", beliefs: PRIORS },
  {
    what: "ring factor left out",
    source: 1,
    kind: "iris",
    beliefs: { ...PRIORS, ringFactor: measured(1, 0) },
  },
  { what: "none", source: 0, kind: "ruler", beliefs: PRIORS },
  {
    what: "perspective ignored",
    source: 0,
    kind: "ruler",
    beliefs: { ...PRIORS, perspective: "ignored" },
  },
  { what: "skin taken as flat", source: 0, kind: "ruler", beliefs: { ...PRIORS, skin: "flat" } },
];

const SHOWN: readonly LengthName[] = ["outerCanthi", "front", "tail", "startHeight"];

function mistakeTable(): string {
  const people = Math.max(1, Math.round(PEOPLE / 10));
  const rows = MISTAKES.map(({ what, source: index, kind, beliefs }) => {
    const source = SOURCES[index] as Source;
    const tallies = study(source, people, deviationsFrom(SEED), beliefs);
    const cells = SHOWN.map((name) => {
      const { held, bias } = tallies[`${kind}.${name}`];
      return `${percent(held)} (${signed(bias)})`;
    });
    return [`${source.name}; scale by ${kind}`, what, ...cells];
  });
  return [
    `${people} people for each row. Share of 95 % intervals that hold the truth, and in brackets the median error, in millimetres.`,
    table(["source", "mistake", ...SHOWN.map((name) => LENGTHS[name])], rows),
  ].join("\n\n");
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function signed(value: number): string {
  return `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(2)}`;
}

const TABLES = {
  faces: realFacesTable,
  arches: () => archTable(deviationsFrom(SEED + 100), Math.max(1, Math.round(PEOPLE / 10))),
  mistakes: mistakeTable,
  slopes: () => slopeTable(SEED + 200, 2 * PEOPLE),
  limits: () => limitTable(SEED + 300, 2 * PEOPLE),
  coverage: coverageTable,
};
const texts = Object.fromEntries(
  Object.entries(TABLES)
    .filter(([name]) => ONE_TABLE === undefined || name === ONE_TABLE)
    .map(([name, text]) => [name, text()]),
);
const PAGE = "docs/accuracy.md";
const page = intoPage(readFileSync(PAGE, "utf8"), texts);
writeFileSync(PAGE, await format(page, { parser: "markdown", printWidth: 100 }));
