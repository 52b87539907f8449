import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { markupsPage } from "./markups-page.js";

it("docs/markups.md says what the library says (npm run docs:markups writes it)", async () => {
  expect(readFileSync("docs/markups.md", "utf8")).toBe(await markupsPage());
});
