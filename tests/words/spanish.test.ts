import { mm, type Note, planBrows, type Side } from "brow-geometry";
import { drawSheet, drawStrip } from "brow-geometry/drawing";
import { ENGLISH, say, type Sentence, SPANISH, type Words } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { expectInside, expectNoCollisions } from "../drawing/expect-tidy.js";
import { picturesOf } from "../drawing/picture.js";
import { face, PICTURES, plan, textsOf } from "../support/every-picture.js";

/** Tables of a catalogue whose texts have codes. */
const tablesOf = ({ sentences, advice, labels, terms }: Words): readonly object[] => [
  sentences,
  advice,
  labels,
  ...Object.values(terms),
];

/** Every form of a text: functions are asked for both sides, for one and for two of something. */
function formsOf(text: Sentence<never>): readonly string[] {
  if (typeof text === "string") return [text];
  const picked = text as (values: object) => string;
  return (["right", "left"] as const).flatMap((side) =>
    [1, 2].map((count) =>
      picked({
        side,
        wide: side,
        count,
        amount: count,
        weeks: count,
        earned: count,
        landmark: "alare",
        field: Array.from({ length: count }),
      }),
    ),
  );
}

const placesOf = (text: string): readonly string[] =>
  [...text.matchAll(/\{([\w.]+)(?::(\w+))?\}/g)].map(([, name = ""]) => name);

const wordsIn = (text: string): readonly string[] =>
  text.replace(/\{[^}]*\}/g, "").match(/\p{L}{3,}/gu) ?? [];

/** Words that say which of two a Spanish sentence is about: such a sentence needs no place for it. */
const BENT = ["side", "wide", "landmark"];

describe("Spanish", () => {
  it("says of every note what English says: each of its values", () => {
    for (const [nth, table] of tablesOf(ENGLISH).entries()) {
      const spanish = tablesOf(SPANISH)[nth] as Readonly<Record<string, Sentence<never>>>;
      for (const [code, text] of Object.entries<Sentence<never>>(table as never)) {
        const asked = new Set(formsOf(text).flatMap(placesOf));
        for (const form of formsOf(spanish[code] ?? "")) {
          const said = new Set(placesOf(form));
          expect(
            [...said].filter((name) => !asked.has(name)),
            `${code}: ${form}`,
          ).toEqual([]);
          const unsaid = [...asked].filter((name) => !said.has(name));
          const isBent = typeof spanish[code] === "function";
          expect(
            unsaid.filter((name) => !(isBent && BENT.includes(name))),
            code,
          ).toEqual([]);
        }
      }
    }
  });

  const english = new Set(
    tablesOf(ENGLISH)
      .flatMap((table) => Object.values<Sentence<never>>(table as never))
      .flatMap(formsOf)
      .flatMap(wordsIn),
  );
  const spanish = new Set(
    tablesOf(SPANISH)
      .flatMap((table) => Object.values<Sentence<never>>(table as never))
      .flatMap(formsOf)
      .flatMap(wordsIn),
  );

  it("has no text of English but names and what both spell alike", () => {
    const same = tablesOf(ENGLISH).flatMap((table, nth) => {
      const other = tablesOf(SPANISH)[nth] as Readonly<Record<string, unknown>>;
      return Object.entries(table).flatMap(([code, text]) =>
        typeof text === "string" && text === other[code] && wordsIn(text).length > 0 ? [text] : [],
      );
    });
    expect([...new Set(same)].sort()).toEqual(["iris"]);
  });

  it.each(PICTURES)("leaves no English in the picture of %s, inside its frame", (_, drawn) => {
    for (const source of drawn({ words: SPANISH })) {
      const said = textsOf(source).flatMap(wordsIn);
      expect(said.length).toBeGreaterThan(10);
      expect(said.filter((word) => english.has(word) && !spanish.has(word))).toEqual([]);
      for (const picture of picturesOf(source)) {
        expectInside(picture);
        expectNoCollisions(picture);
      }
    }
  });

  it("says at the foot of every sheet that no native practitioner has read it yet", () => {
    const foot = drawSheet(plan, { words: SPANISH }).split("<tfoot>")[1] ?? "";
    expect(foot).toContain("aún no leída por profesionales nativos");
  });

  it("agrees in number and gender", () => {
    const said = (code: string, values: Note["values"]): string => say({ code, values }, SPANISH);
    const both = (code: string, more: Note["values"] = {}): readonly string[] =>
      (["right", "left"] satisfies Side[]).map((side) => said(code, { side, ...more }));
    expect(both("one-iris")).toEqual([
      "Solo se midió el iris derecho.",
      "Solo se midió el iris izquierdo.",
    ]);
    expect(both("mark-landmark", { landmark: "alare" })).toEqual([
      "ala derecha de la nariz",
      "ala izquierda de la nariz",
    ]);
    expect(both("mark-landmark", { landmark: "endocanthion" })[0]).toBe(
      "ángulo interno del ojo derecho",
    );
    expect(both("dot-stays", { dot: "upperStart" })[0]).toBe("Ceja derecha, inicio: se queda");
    expect(said("degrees", { amount: 1 })).toBe("1 grado");
    expect(said("degrees", { amount: 2.5 })).toBe("2,5 grados");
    const times = { least: 4, most: 8 };
    expect(said("result-too-early", { weeks: 1, ...times })).toMatch(/^1 semana después/);
    expect(said("result-too-early", { weeks: 2, ...times })).toMatch(/^2 semanas después/);
  });

  it("writes figures as Spanish does, in the reader's unit", () => {
    expect(say({ code: "way-up", values: { by: 1.5 } }, SPANISH)).toBe("1,5 mm hacia arriba");
    const words: Words = { ...SPANISH, lengths: "inch", inchMarks: 32 };
    const moved = planBrows(face, { levelLimit: mm(1) });
    const texts = [drawStrip(plan, { words }), drawSheet(moved, { words })].flatMap(textsOf);
    expect(texts.filter((text) => /\d\.\d|\bmm\b/.test(text))).toEqual([]);
  });
});
