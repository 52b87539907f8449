import {
  checkCapture,
  correctionOf,
  drawPlan,
  fromMarkup,
  measured,
  mm,
  type Note,
  type PlannableFace,
  px,
  recordOf,
  say,
  WORKING_TOLERANCES,
  workSteps,
} from "brow-geometry";
import { gradeMap, RULER_SHEET_RUBRIC } from "brow-geometry/grading";
import { describeMarkup, mapFace } from "brow-geometry/landmarks";
import {
  carryInto,
  checkVisits,
  compareResult,
  evenReadings,
  grantWishes,
  stringLines,
  visitsOf,
  weighChoices,
  type Wish,
  WISHES,
} from "brow-geometry/mapping";
import { ENGLISH, type Sentence } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { MARKUP_NAMES } from "../../src/landmarks/internal.js";
import { keysOf } from "../../src/units/internal.js";
import {
  check,
  face,
  meshFile,
  onPhoto,
  photo,
  PICTURES,
  plan,
  textsOf,
  weighed,
} from "../support/every-picture.js";
import { PSEUDO } from "../support/pseudo-words.js";

/** Two Latin letters in a row that are no unit and no number of an entry. */
const english = (text: string): readonly string[] =>
  text.match(/(?<![A-Za-z])(?!mm(?![A-Za-z]))[A-Za-z]{2,}/g) ?? [];

const unmarked = (pictures: readonly string[]): readonly string[] =>
  pictures.flatMap((source) => textsOf(source).flatMap(english));

const said = (notes: readonly Note[]): readonly string[] =>
  notes.flatMap((note) => english(say(note, PSEUDO)));

const granted = keysOf(WISHES).flatMap((wish) => {
  const asked: readonly Wish[] = [{ wish, amount: mm(1) }];
  const most: readonly Wish[] = [{ wish, amount: mm(20) }];
  return [asked, most].flatMap((wishes) => grantWishes(face, wishes).grants);
});

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
    expect(unmarked(drawn({ words }))).toEqual([]);
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

  it("in why choices cannot be planned", () => {
    const { right, left, ...others } = face;
    const { pupil: _, ...blind } = right;
    const rows = [
      ...weighChoices(face, [
        { eyeWidthShare: 3 },
        { shape: { startSlope: 9 } },
        { thickness: { start: mm(-1), body: mm(7), arch: mm(6) } },
        { thickness: { start: mm(7), body: mm(40), arch: mm(40) } },
        { pins: [{ side: "right", dot: "upperArch", at: mm([-64, 27]) }] },
        { pins: [{ side: "left", dot: "upperArch", at: mm([Number.NaN, 2]) }] },
      ]).rows,
      ...weighChoices({ right: blind, left, ...others }, [{ arch: "alare-through-pupil" }]).rows,
    ];
    const whys = rows.flatMap(
      ({ reasons: [{ values = {} } = {}] }) => (values["why"] as Note).code,
    );
    expect([...new Set(whys)].sort()).toEqual([
      "why-missing",
      "why-over-eye",
      "why-pins",
      "why-range",
      "why-value",
    ]);
    expect(said(rows.flatMap(({ reasons }) => reasons))).toEqual(["NaN"]);
  });

  it("in what comes after the map", () => {
    const lifted = mapFace(face, ([x, y]) => mm([x, y > 15 ? y + 2 : y])) as PlannableFace;
    const { right, ...others } = lifted;
    const { lower: _, ...upper } = right.brow;
    const results = [lifted, { ...others, right: { ...right, brow: upper } }].map((result, nth) =>
      compareResult(plan, [{ name: "1", weeks: nth, face: result }]),
    );
    const told = results.flatMap(({ results: stages }) =>
      stages.flatMap(({ notes, touchUps }) => [...notes, ...touchUps.map(({ note }) => note)]),
    );
    expect(said(told)).toEqual([]);
    const carried = [carryInto(plan, lifted), carryInto(onPhoto, face)];
    expect(said(carried.flatMap(({ notes }) => notes))).toEqual([]);
    const first = recordOf({ kind: "face", face }, {}, { date: "2026-03-14" });
    const wide = { ...face, left: { ...face.left, exocanthion: mm([50, 5]) } };
    const earlier = visitsOf({ ...first, choices: { eyeWidthShare: 3 } });
    const chain = [
      recordOf({ kind: "face", face: wide }, { lead: "left" }, { date: "2026-03-13", earlier }),
      recordOf(
        { kind: "face", face },
        {},
        { earlier: visitsOf({ ...first, choices: { lead: "left" } }) },
      ),
    ];
    const visits = chain.flatMap(checkVisits);
    expect(
      new Set(
        [...visits, ...told, ...carried.flatMap(({ notes }) => notes)].map(({ code }) => code),
      ).size,
    ).toBeGreaterThan(10);
    expect(said(visits)).toEqual([]);
  });

  it("in what was done to a face, and in what a markup lacks", () => {
    const points = meshFile.landmarks.map((point, index) => (index % 3 === 0 ? null : point));
    points[300] = points[301] ?? null;
    const noted = [
      fromMarkup("mesh-478", points, { ...meshFile, mirrored: "frame" }),
      fromMarkup("mesh-478", meshFile.landmarks, meshFile),
    ].flatMap(({ notes = [] }) => notes);
    expect(new Set(noted.map(({ code }) => code)).size).toBeGreaterThan(6);
    expect(said(noted)).toEqual([]);
    const described = MARKUP_NAMES.map((name) => describeMarkup(name));
    expect(said(described.flatMap(({ beyond }) => beyond))).toEqual([]);
    const { terms } = words;
    const named = described.flatMap(({ name, landmarks, missing, standIns, alare }) => [
      terms.markups[name],
      ...[...landmarks, ...missing].map((landmark) => terms.landmarks[landmark]),
      ...[...standIns.map(({ instead }) => instead), ...alare].map(
        (instead) => (terms.standIns as Readonly<Record<string, string>>)[instead] ?? instead,
      ),
    ]);
    expect(named.flatMap(english)).toEqual([]);
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
    const texts = drawn({ words: ENGLISH }).flatMap((source) => textsOf(source));
    expect(texts.join(" ").length).toBeGreaterThan(100);
    expect(foreign(texts)).toEqual([]);
    expect(texts.filter((text) => /\b0\.67\b(?! mm)/.test(text))).toEqual([]);
  });

  it("in everything that its catalogue says", () => {
    const { sentences, advice, labels, terms } = ENGLISH;
    const said = [sentences, advice, labels, ...Object.values(terms)].flatMap((table) =>
      Object.values<Sentence<never>>(table).map((text) => String(text).replace(/\{[^}]*\}/g, "")),
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
