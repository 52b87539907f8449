import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { allElements, parseXml } from "../support/parse-xml.js";
import { figures } from "./figures.js";

describe("figures of README and guides", () => {
  it("are those that `npm run docs:figures` draws, and no others", () => {
    expect(readdirSync("docs/figures").sort()).toEqual([...figures.keys()].sort());
  });

  it.each([...figures])("%s is current, and well-formed", (name, draw) => {
    const committed = readFileSync(`docs/figures/${name}`, "utf8");
    expect(committed === draw(), `run npm run docs:figures and look at ${name}`).toBe(true);
    expect(allElements(parseXml(committed)).map((one) => one.name)).toContain("title");
  });

  it("are shown in README or a guide, each with words for readers who do not see it", () => {
    const guides = readdirSync("docs").filter((file) => file.endsWith(".md"));
    const pages = ["README.md", ...guides.map((file) => `docs/${file}`)];
    const text = pages.map((file) => readFileSync(file, "utf8")).join("\n");
    for (const name of figures.keys()) {
      expect(text).toMatch(new RegExp(`!\\[[^\\]]{20,}\\]\\((?:docs/)?figures/${name}\\)`));
    }
  });
});
