import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { circles, twinNames, violations } from "./floors.js";

const files: readonly string[] = readdirSync("src", { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts"))
  .map((path) => `src/${path}`);

describe("the floors of the sources", () => {
  it.each(files)("hold in %s", (file) => {
    expect(violations(file, readFileSync(file, "utf8"))).toEqual([]);
  });

  it("lead round in no circle", () => {
    expect(circles(new Map(files.map((file) => [file, readFileSync(file, "utf8")])))).toEqual([]);
  });

  // Schemas are named after what they describe.
  it("have no two files whose names differ by the order of words", () => {
    const named = files.filter(
      (file) => !/\/(index|internal|notes?|words)\.ts$|^src\/(?:schema|words)\//.test(file),
    );
    expect(twinNames(named)).toEqual([]);
  });

  it("have no room of more than 25 files", () => {
    const folders = files.map((file) => file.slice(0, file.lastIndexOf("/")));
    const crowded = [...new Set(folders)].filter(
      (folder) => folders.filter((each) => each === folder).length > 25,
    );
    expect(crowded).toEqual([]);
  });
});

describe("circles", () => {
  it("finds a way back, through types too", () => {
    const texts = new Map([
      ["src/a.ts", 'import type { B } from "./b.js";'],
      ["src/b.ts", 'export { c } from "./c.js";'],
      ["src/c.ts", 'type A = import("./a.js").A;'],
      ["src/d.ts", 'import { A } from "./a.js";'],
    ]);
    expect(circles(texts)).toEqual([["src/a.ts", "src/b.ts", "src/c.ts", "src/a.ts"]]);
  });
});

describe("twinNames", () => {
  it("pairs names by their words", () => {
    const twins = ["src/a/check-drawn.ts", "src/b/drawn-checks.ts"];
    expect(twinNames([...twins, "src/a/drawn.ts"])).toEqual([twins]);
  });
});

describe("violations", () => {
  it.each([
    ["a lower floor", "src/mapping/plan.ts", 'import { mirror } from "../symmetry/index.js";'],
    ["a file next door", "src/units/scale.ts", 'import { mm } from "./quantity.js";'],
    ["gl-matrix in geometry", "src/geometry/line.ts", 'import { vec2 } from "gl-matrix";'],
    ["zod in schema", "src/schema/face.ts", 'import * as z from "zod";'],
    ["its small edition", "src/schema/face.ts", 'import * as z from "zod/mini";'],
    ["types for schemas", "src/schema/plan.ts", 'import type { Plan } from "../mapping/index.js";'],
    [
      "tables for schemas",
      "src/schema/plan.ts",
      'import { LEADS, type Plan } from "../mapping/index.js";',
    ],
    ["low values for schemas", "src/schema/face.ts", 'import { mm } from "../units/index.js";'],
    ["names of the root", "src/index.ts", 'export { mm } from "./units/index.js";'],
    ["an earlier room", "src/mapping/plan/a.ts", 'import "../dots/b.js";'],
  ])("accepts %s", (_, file, text) => {
    expect(violations(file, text)).toEqual([]);
  });

  it.each([
    ["a higher floor", "src/units/a.ts", 'import "../geometry/index.js";', "units (floor 1)"],
    [
      "its types",
      "src/units/a.ts",
      'import type { A } from "../geometry/index.js";',
      "units (floor",
    ],
    [
      "types in place",
      "src/units/a.ts",
      'type A = import("../geometry/index.js").A;',
      "units (floor",
    ],
    [
      "a dynamic import",
      "src/units/a.ts",
      'await import("../geometry/index.js");',
      "units (floor 1)",
    ],
    ["the same floor", "src/grading/a.ts", 'import "../drawing/index.js";', "grading (floor 7)"],
    ["a way past an index", "src/mapping/a.ts", 'import "../units/scale.js";', "past the index"],
    ["a folder's own index", "src/units/a.ts", 'export { a } from "./index.js";', "its own index"],
    ["an import without ending", "src/units/a.ts", 'import "./scale";', "lacks the ending"],
    ["gl-matrix elsewhere", "src/units/a.ts", 'import "gl-matrix";', "units imports gl-matrix"],
    ["a part of gl-matrix", "src/geometry/a.ts", 'import "gl-matrix/vec2";', "gl-matrix/vec2"],
    ["zod elsewhere", "src/mapping/a.ts", 'import type { z } from "zod";', "mapping imports zod"],
    ["Node", "src/units/a.ts", 'import "node:fs";', "units imports node:fs"],
    [
      "schemas that compute",
      "src/schema/a.ts",
      'import { a } from "../mapping/index.js";',
      "more than",
    ],
    [
      "a function renamed to a table",
      "src/schema/a.ts",
      'import { a as LEADS } from "../mapping/index.js";',
      "more than",
    ],
    [
      "all of a floor for schemas",
      "src/schema/a.ts",
      'import * as a from "../mapping/index.js";',
      "more than",
    ],
    [
      "schemas in the root",
      "src/index.ts",
      'export { a } from "./schema/index.js";',
      "root imports",
    ],
    ["a folder of no floor", "src/new/a.ts", 'import "../units/index.js";', "new has no floor"],
    ["export *", "src/units/index.ts", 'export * from "./scale.js";', "hides the names"],
    ["a later room", "src/mapping/dots/a.ts", 'import "../plan/b.js";', "plan, a later room"],
    ["a file outside of rooms", "src/mapping/dots/a.ts", 'import "../b.js";', "is no room of"],
    ["a room without a topic", "src/units/helpers.ts", "", "helpers names no topic"],
  ])("refuses %s", (_, file, text, message) => {
    expect(violations(file, text)).toEqual([expect.stringContaining(message)]);
  });
});
