import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { entries } from "../package/entries.js";
import { exportedSymbols } from "../package/exported-symbols.js";
import { NAMES_HEAD, namesPage } from "./names-page.js";

describe("docs/names.md (npm run names writes it)", async () => {
  const sections = await namesPage();
  const page = readFileSync("docs/names.md", "utf8");
  const specifiers = entries.map(({ specifier }) => specifier);

  it("has a section for every entry point, and nothing else", () => {
    expect([...sections.keys()]).toEqual(specifiers);
    expect(page).toBe([NAMES_HEAD, ...sections.values()].join("\n"));
  });

  it.each(specifiers)("lists the names of %s", (specifier) => {
    expect(page).toContain(sections.get(specifier));
  });

  it("finds every name of the root in a folder", () => {
    const [ofRoot = [], ...ofFolders] = exportedSymbols().symbols.values();
    const inFolders = new Set(ofFolders.flat());
    expect(ofRoot.filter((symbol) => !inFolders.has(symbol))).toEqual([]);
  });
});
