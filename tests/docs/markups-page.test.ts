import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { MARKUP_NAMES } from "../../src/landmarks/internal.js";
import { markupsPage } from "./markups-page.js";

it("docs/markups.md says what the library says (npm run docs:markups writes it)", async () => {
  expect(readFileSync("docs/markups.md", "utf8")).toBe(await markupsPage());
});

it.each(MARKUP_NAMES)("README says that a file for the demo may hold %s", (name) => {
  const sentence = /^`markup` is [^]*?(?=\n\n)/m.exec(readFileSync("README.md", "utf8"));
  expect(sentence?.[0]).toContain(`"${name}"`);
});
