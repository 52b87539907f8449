import {
  checkCapture,
  checkDrawn,
  correctionOf,
  drawPlan,
  drawSheet,
  fromMarkup,
  measured,
  mm,
  type Note,
  planBrows,
  planOnPhoto,
  px,
  requirePlannable,
  say,
  scaleFromIris,
  turnToFront,
  WORKING_TOLERANCES,
  workSteps,
} from "brow-geometry";
import { gradeMap, RULER_SHEET_RUBRIC } from "brow-geometry/grading";
import { describeMarkup } from "brow-geometry/landmarks";
import {
  drawCaptures,
  drawAreas,
  drawCarried,
  drawChoices,
  drawResult,
  drawStrip,
} from "brow-geometry/drawing";
import {
  carryInto,
  evenReadings,
  grantWishes,
  type SkinArea,
  stringLines,
  weighChoices,
  type Wish,
  WISHES,
} from "brow-geometry/mapping";
import { MARKUP_NAMES } from "../../src/landmarks/internal.js";
import { parseLandmarkFile } from "brow-geometry/schema";
import { pointOnSide } from "brow-geometry/symmetry";
import { keysOf } from "../../src/units/internal.js";
import { ENGLISH, type Words } from "brow-geometry/words";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseXml, type XmlElement } from "../support/parse-xml.js";
import { syntheticFace } from "../support/synthetic-face.js";

/** English with every letter outside of its places in another alphabet: Greek for Latin, by its number. */
const marked = (sentence: string): string =>
  sentence.replace(/\{[^}]*\}|[A-Za-z]/g, (found) =>
    found.length > 1 ? found : String.fromCodePoint(0x3b1 + (found.charCodeAt(0) % 24)),
  );

const allMarked = <Table extends Readonly<Record<string, string>>>(table: Table): Table =>
  Object.fromEntries(Object.entries(table).map(([key, text]) => [key, marked(text)])) as Table;

const PSEUDO: Words = {
  ...ENGLISH,
  sentences: allMarked(ENGLISH.sentences),
  advice: allMarked(ENGLISH.advice),
  labels: allMarked(ENGLISH.labels),
  terms: {
    ...(Object.fromEntries(
      Object.entries(ENGLISH.terms).map(([name, words]) => [name, allMarked(words)]),
    ) as unknown as Words["terms"]),
  },
};

/** Two Latin letters in a row that are no unit and no number of an entry. */
const english = (text: string): readonly string[] =>
  text.match(/(?<![A-Za-z])(?!mm(?![A-Za-z]))[A-Za-z]{2,}/g) ?? [];

function textsOf({ name, text, children }: XmlElement): readonly string[] {
  return [...(name === "style" ? [] : [text]), ...children.flatMap(textsOf)];
}

const unmarked = (pictures: readonly string[]): readonly string[] =>
  pictures.flatMap((source) => textsOf(parseXml(source)).flatMap(english));

const said = (notes: readonly Note[]): readonly string[] =>
  notes.flatMap((note) => english(say(note, PSEUDO)));

const face = syntheticFace();
const pins = [{ side: "left", dot: "upperArch", at: mm([40, 27]), by: "1", reason: "2" }] as const;
const plan = planBrows(face, { lead: "left", pins });
const file = parseLandmarkFile(JSON.parse(readFileSync("examples/data/sample-face.json", "utf8")));
if (file.markup !== "mesh-478") throw new Error(file.markup);
const photo = requirePlannable(fromMarkup("mesh-478", file.landmarks, file));
const onPhoto = planOnPhoto(photo, turnToFront(photo, scaleFromIris(photo)));
const check = checkDrawn(plan, {
  dots: {
    right: { upperStart: pointOnSide({ distance: 25, height: 12 }, "right") },
    left: { upperArch: pointOnSide({ distance: 40.8, height: 27 }, "left") },
  },
  readings: { right: {}, left: { front: measured(40, 0.1) } },
});
const weighed = weighChoices(face, [
  { lead: "left", thickness: { start: mm(7), body: mm(6), arch: mm(5) }, levels: "higher" },
  { lead: "right", carry: "measure", start: "alare-vertical", arch: "alare-through-pupil", pins },
  { arch: "brow-length-share", frontShare: 2 / 3 },
  { noseBent: true, tailHeight: "level-with-upper-start", shape: { angularity: 0.5 } },
]);

const granted = keysOf(WISHES).flatMap((wish) => {
  const asked: readonly Wish[] = [{ wish, amount: mm(1) }];
  const most: readonly Wish[] = [{ wish, amount: mm(20) }];
  return [asked, most].flatMap((wishes) => grantWishes(face, wishes).grants);
});

/** What is covered and what is not, what is overlapped and what is clear. */
const AREAS = (["cover", "stay-off"] as const).flatMap((aim) =>
  [30, 24].map((top): SkinArea => {
    const edge = mm([
      [24, top - 5],
      [34, top - 5],
      [30, top],
    ]);
    return { name: "«»", aim, edge, margin: mm(0.5) };
  }),
);

/** Every drawing, by what is drawn. */
const PICTURES: readonly (readonly [what: string, drawn: (words: Words) => readonly string[]])[] = [
  ["a plan", (words) => [drawPlan(plan, { words, overlap: true, check })]],
  ["a plan on a photo", (words) => [drawPlan(onPhoto, { words, overlap: true })]],
  ["a strip", (words) => [drawStrip(plan, { words })]],
  ["a sheet", (words) => drawSheet(plan, { words, overlap: true, check })],
  [
    "a sheet of two thirds",
    (words) => drawSheet(planBrows(face, { arch: "brow-length-share" }), { words }),
  ],
  ["a sheet of a photo", (words) => drawSheet(onPhoto, { words })],
  ["choices", (words) => drawChoices(face, weighed, { words })],
  ["a plan over areas of skin", (words) => [drawAreas(plan, AREAS, { words })]],
  ["a plan in another capture", (words) => [drawCarried(carryInto(plan, face), face, { words })]],
  [
    "results",
    (words) => [
      drawResult(
        plan,
        [
          { name: "1", weeks: 0, face },
          { name: "2", weeks: 6, face },
        ],
        { words },
      ),
    ],
  ],
  [
    "captures",
    (words) => [
      drawCaptures(
        [
          { name: "1", face },
          { name: "2", face },
        ],
        { words },
      ),
    ],
  ],
];

/** What is said about plans and their steps. */
const planNotes = (): readonly Note[] => {
  const steps = workSteps(plan);
  const { points, lines } = stringLines(plan);
  return [
    ...[plan, onPhoto].flatMap(({ cautions, reasons }) => [...cautions, ...reasons]),
    ...steps,
    ...steps.flatMap(({ why, checks }) => [...why, ...checks.map(({ laid }) => laid)]),
    ...points,
    ...lines,
    ...[...check.dots, ...check.measures].flatMap((one) => correctionOf(one) ?? []),
  ];
};

describe("a catalogue in another alphabet leaves no English", () => {
  const words = PSEUDO;

  it.each(PICTURES)("in the picture of %s", (_, drawn) => {
    expect(unmarked(drawn(words))).toEqual([]);
  });

  it("and would be found out where it did", () => {
    expect(unmarked([drawPlan(plan)])).toContain("planned");
  });

  it("in moves, steps, reasons, cautions and corrections", () => {
    for (const { moves } of [plan, onPhoto]) {
      expect(moves.flatMap((move) => english(say(move, words)))).toEqual([]);
    }
    expect(said(planNotes())).toEqual([]);
  });

  it("in what a capture was checked for, a grade and readings", () => {
    const findings = [
      ...checkCapture(photo, { purpose: "research", declared: { upright: true, relaxed: false } }),
      ...checkCapture({ right: {}, left: { pupil: px([1, 1]) }, midline: {} }, { purpose: "map" }),
    ];
    expect(findings.length).toBeGreaterThan(20);
    expect(said(findings)).toEqual([]);
    const { items, ungraded, toSettle, summary } = gradeMap(
      {
        dots: { right: {}, left: { upperArch: plan.dots.left.upperArch } },
        readings:
          check.comparison.differences.length > 0
            ? { right: { front: measured(30, 0.4) }, left: { front: measured(31, 0.4) } }
            : { right: {}, left: {} },
      },
      { kind: "plan", plan },
      {
        rubric: { ...RULER_SHEET_RUBRIC, name: "1", source: "2" },
        tolerances: { ...WORKING_TOLERANCES, name: "3" },
        passMark: 0.5,
      },
    );
    expect(said(items.map(({ feedback }) => feedback))).toEqual([]);
    expect(said(ungraded.map(({ reason }) => reason))).toEqual([]);
    expect(said([...toSettle, ...summary])).toEqual([]);
    const sheet = {
      right: { archHeight: measured(25, 0.1), frontShare: measured(0.6, 0.01) },
      left: { archHeight: measured(27, 0.1), frontShare: measured(0.7, 0.01) },
    };
    expect(said(evenReadings(sheet, "right"))).toEqual([]);
    expect(said([...weighed.notes, ...weighed.rows.flatMap(({ reasons }) => reasons)])).toEqual([]);
    expect(new Set(granted.map(({ note }) => note.code)).size).toBe(2);
    expect(said(granted.map(({ note }) => note))).toEqual([]);
  });

  it("in what was done to a face, and in what a markup lacks", () => {
    const points = file.landmarks.map((point, index) => (index % 3 === 0 ? null : point));
    points[300] = points[301] ?? null;
    const noted = [
      fromMarkup("mesh-478", points, { ...file, mirrored: "frame" }),
      fromMarkup("mesh-478", file.landmarks, file),
    ].flatMap(({ notes = [] }) => notes);
    expect(new Set(noted.map(({ code }) => code)).size).toBeGreaterThan(6);
    expect(said(noted)).toEqual([]);
    const described = MARKUP_NAMES.map((name) => describeMarkup(name));
    expect(said(described.flatMap(({ beyond }) => beyond))).toEqual([]);
  });
});

describe("English speaks to artists", () => {
  /** Codes of the catalogue and of its vocabularies that are no words of English. */
  const codes = [
    ...Object.keys(ENGLISH.sentences),
    ...Object.keys(ENGLISH.labels),
    ...Object.values(ENGLISH.terms).flatMap((table) => Object.keys(table)),
  ].filter((code) => /[a-z](?:-[a-z]|[A-Z])/.test(code));
  const coded = new RegExp(`(?<![\\w-])(?:${codes.join("|")})(?![\\w-])`, "g");
  const latin =
    /\w*(?:alare|canthion|limbus|cheilion|glabella|sellion|nasale|labiale|stomion|menton\b)\w*/gi;
  const foreign = (texts: readonly string[]): readonly string[] =>
    texts.flatMap((text) => [...(text.match(coded) ?? []), ...(text.match(latin) ?? [])]);

  it.each(PICTURES)("in the picture of %s: no code, no Latin, two thirds by name", (_, drawn) => {
    const texts = drawn(ENGLISH).flatMap((source) => textsOf(parseXml(source)));
    expect(texts.join(" ").length).toBeGreaterThan(100);
    expect(foreign(texts)).toEqual([]);
    expect(texts.filter((text) => /\b0\.67\b(?! mm)/.test(text))).toEqual([]);
  });

  it("in everything that its catalogue says", () => {
    const { sentences, advice, labels, terms } = ENGLISH;
    const said = [sentences, advice, labels, ...Object.values(terms)].flatMap((table) =>
      Object.values(table).map((text) => text.replace(/\{[^}]*\}/g, "")),
    );
    expect(foreign(said)).toEqual([]);
    expect(foreign(planNotes().map((note) => say(note)))).toEqual([]);
  });

  it("and would be found out where it did not", () => {
    expect(foreign(["at the brow-length-share", "the endocanthion"])).toEqual([
      "brow-length-share",
      "endocanthion",
    ]);
  });
});
