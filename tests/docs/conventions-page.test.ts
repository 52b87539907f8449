import { readFileSync } from "node:fs";
import { ARCH_CONVENTIONS } from "brow-geometry";
import { ENGLISH } from "brow-geometry";
import { BROW_ARCHES } from "../../src/landmarks/internal.js";
import { GUIDES } from "brow-geometry/landmarks";
import { keysOf } from "../../src/units/internal.js";
import { describe, expect, it } from "vitest";

const page = readFileSync("docs/conventions.md", "utf8");

/** The paragraph or the row of a table that says what a rule is. */
function passageOf(rule: string): string | undefined {
  return page
    .split(/\n(?=\||\n)/)
    .find((passage) => passage.includes(`\`"${rule}"\``))
    ?.replaceAll(/\s+/g, " ");
}

describe("the page of conventions", () => {
  it.each([...keysOf(GUIDES), ...BROW_ARCHES])("says in the same words what %s is", (rule) => {
    const words = ENGLISH.terms.rules[rule];
    expect(passageOf(rule)?.toLowerCase() ?? "").toContain(words);
  });

  it("has a row for every rule of the arch, in their order", () => {
    const rows = [...page.matchAll(/^\| `"([\w-]+)"`.*\|.*\|.*\|$/gm)].map(([, rule]) => rule);
    expect(rows).toEqual(ARCH_CONVENTIONS);
  });
});
