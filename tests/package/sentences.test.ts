import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sentencesIn } from "./sentences.js";

/** Files whose words are part of a table that holds more than words, and what that is. */
const tables: ReadonlyMap<string, string> = new Map([
  ["src/landmarks/markups/from-markup.ts", "the need of an error, assembled"],
  ["src/units/quantities/geometry-error.ts", "the error itself"],
  ["src/units/decisions/tolerances.ts", "sources of tolerances"],
  ["src/drawing/sheet/style-sheet.ts", "a style sheet"],
]);

/** Schemas and readers of files say only what they need. */
const sources: readonly string[] = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((path) => `src/${path}`)
  .filter(
    (path) =>
      path.endsWith(".ts") &&
      !/\/words\.ts$|^src\/(?:schema|files|words\/(?:english|spanish|anatomical))\//.test(path),
  );

const held = (file: string): readonly string[] => sentencesIn(file, readFileSync(file, "utf8"));

describe("sentences", () => {
  it.each(sources.filter((file) => !tables.has(file)))("stand apart from %s", (file) => {
    expect(held(file)).toEqual([]);
  });

  it.each([...tables.keys()])(
    "are looked for in every file but those that hold one, as %s",
    (file) => {
      expect(held(file)).not.toEqual([]);
    },
  );
});

describe("sentencesIn", () => {
  it("finds words in a row, in templates too", () => {
    const text = 'const a = "it is late"; const b = `${a} is too late`; const c = "tail end";';
    expect(sentencesIn("a.ts", text)).toEqual(["a.ts:1: it is late", "a.ts:1: … is too late"]);
  });

  it("finds what stands in for a landmark of a markup", () => {
    const text = 'const a = { instead: "side of the nose" };';
    expect(sentencesIn("a.ts", text)).toEqual(["a.ts:1: side of the nose"]);
  });

  it.each([
    ["what an error needs", 'throw new GeometryError("a", { need: "a length of 0 or more" });'],
    ["a check's need", 'requireObject("f", "a", a, "an object with a purpose");'],
    ["where a figure is from", 'const a = { source: "default of this library" };'],
    ["a type", 'type A = "one of its own kind";'],
  ])("passes over %s", (_, text) => {
    expect(sentencesIn("a.ts", text)).toEqual([]);
  });
});
