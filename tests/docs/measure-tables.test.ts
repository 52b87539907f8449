import { MEASURE_KINDS } from "brow-geometry/landmarks";
import { readFileSync } from "node:fs";
import { type FaceMeasureName } from "brow-geometry/landmarks";
import { MEASURE_NAMES } from "../../src/landmarks/internal.js";
import { ENGLISH, MEASURES, measuresFromReadings, mm } from "brow-geometry";
import ts from "typescript";
import { describe, expect, it } from "vitest";

/** The doc comments of the rows of a table in a source file, without their full stops. */
function commentsOfRows(file: string, table: string): ReadonlyMap<string, string> {
  const source = ts.createSourceFile(
    file,
    readFileSync(file, "utf8"),
    ts.ScriptTarget.ES2022,
    true,
  );
  const found = new Map<string, string>();
  const visit = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && node.name.getText() === table) {
      ts.forEachChild(node, rows);
    } else {
      ts.forEachChild(node, visit);
    }
  };
  const rows = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node)) {
      const [doc] = ts.getJSDocCommentsAndTags(node);
      const text = doc === undefined ? "" : (ts.getTextOfJSDocComment(doc.comment) ?? "");
      found.set(node.name.getText(), text.replace(/\s+/g, " ").replace(/\.$/, ""));
    } else {
      ts.forEachChild(node, rows);
    }
  };
  visit(source);
  return found;
}

/** The rows of the table under a head in a page, cells apart. */
function tableUnder(page: string, head: readonly string[]): readonly (readonly string[])[] {
  const lines = readFileSync(page, "utf8").split("\n").map(cellsOf);
  const start = lines.findIndex((cells) => cells.join() === head.join());
  const rows = lines.slice(start + 2);
  return rows.slice(
    0,
    rows.findIndex((cells) => cells.length === 0),
  );
}

function cellsOf(line: string): readonly string[] {
  return line.startsWith("|")
    ? line
        .split("|")
        .slice(1, -1)
        .map((cell) => cell.trim())
    : [];
}

function code(name: string): string {
  return `\`${name}\``;
}

const fromTo = commentsOfRows("src/landmarks/face/measures.ts", "MEASURES");
const names = Object.keys(MEASURES) as FaceMeasureName[];
const readable = MEASURE_NAMES.filter((name) => MEASURES[name].byHand);

describe("the tables of measures", () => {
  it("in docs/conventions.md says of every measure what the library says", () => {
    const head = ["name", "in words", "from – to", "unit", "tolerance"];
    expect(tableUnder("docs/conventions.md", head)).toEqual(
      names.map((name) => {
        const { kind } = MEASURES[name];
        const { unit, tolerance } = MEASURE_KINDS[kind];
        return [
          code(name),
          ENGLISH.terms.measures[name],
          fromTo.get(name),
          unit || "–",
          tolerance ? code(tolerance) : "–",
        ];
      }),
    );
  });

  it("in docs/hand-readings.md names what can be read by hand", () => {
    expect(tableUnder("docs/hand-readings.md", ["name", "from – to"])).toEqual(
      readable.map((name) => [code(name), fromTo.get(name)]),
    );
    const { left } = measuresFromReadings({
      left: Object.fromEntries(readable.map((name) => [name, mm(20)])),
    });
    expect(Object.keys(left)).toEqual([...readable, "frontShare"]);
  });
});
