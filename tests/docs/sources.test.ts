import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const sources = readFileSync("docs/sources.md", "utf8");
/** Year, volume and page of a journal, a standard, or a doi. */
const citation =
  /\b(?:19|20)\d\d;\d+:\d+|\bJCGM \d+:\d+|\b(?:ISO|EN|ISO\/IEC) \d+(?:[-:]\d+)?|\bdoi 10\.[^\s,;)]+\w/g;

describe("docs/sources.md", () => {
  it("holds every source that the library cites", () => {
    const cited = readdirSync("src", { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts"))
      .flatMap((file) => {
        const text = readFileSync(`src/${file}`, "utf8").replaceAll(/\n\s*\*\s*/g, " ");
        return Array.from(text.matchAll(citation), ([one]) => `${file}: ${one}`);
      });
    expect(cited.length).toBeGreaterThan(20);
    expect(cited.filter((one) => !sources.includes(one.slice(one.indexOf(": ") + 2)))).toEqual([]);
  });

  it("knows no status but those it explains", () => {
    const [, explained = "", rest = ""] = /\| status([\s\S]*?)\n\n([\s\S]*)/.exec(sources) ?? [];
    const words = Array.from(explained.matchAll(/^\| ([a-z ]*[a-z]) +\|/gm), ([, word]) => word);
    expect(words).toContain("published");
    const used = Array.from(rest.matchAll(/^\|.*\| ([^|]*[^| ]) +\|$/gm), ([, word = ""]) => word);
    const stated = used.filter((word) => word !== "status" && !word.startsWith("---"));
    expect(stated.length).toBeGreaterThan(40);
    expect(
      stated.filter((status) => !status.split(", ").every((word) => words.includes(word))),
    ).toEqual([]);
  });
});
