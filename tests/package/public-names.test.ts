import { describe, expect, it } from "vitest";
import { entries } from "./entries.js";
import { exportedNames } from "./exported-symbols.js";
import { publicNames } from "./public-names.js";

describe("public names", () => {
  const exported = exportedNames();
  const specifiers = entries.map(({ specifier }) => specifier);

  it("are listed for every entry point", () => {
    expect(Object.keys(publicNames)).toEqual(specifiers);
  });

  it.each(specifiers)("of %s are the listed ones", (specifier) => {
    expect(exported[specifier]).toEqual(publicNames[specifier]);
  });

  it("of the root are names of a folder", () => {
    const [root = "", ...folders] = specifiers;
    const inFolders = new Set(folders.flatMap((specifier) => publicNames[specifier] ?? []));
    expect(publicNames[root]?.filter((name) => !inFolders.has(name))).toEqual([]);
  });
});
