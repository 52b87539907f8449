import { readFileSync } from "node:fs";
import { blocksOfMarkdown } from "../docs/code-blocks.js";

/** A place in a file of the sources, and what a recipe makes of it. */
interface Edit {
  readonly file: string;
  /** Text that stands in the file once; empty for a file that is new. */
  readonly before: string;
  readonly after: string;
}

/** What one block of a recipe changes. */
export type Step = readonly Edit[];

/**
 * The steps of a recipe of DEVELOPERS.md: its `diff` blocks, in their order. In a block `+++` names a file,
 * `@@` stands between two places of it, and lines are kept or added.
 */
export function recipeSteps(title: string): readonly Step[] {
  const page = readFileSync("DEVELOPERS.md", "utf8");
  const recipe = page.split(/^## /m).find((section) => section.startsWith(`${title}\n`));
  const blocks = blocksOfMarkdown("DEVELOPERS.md", recipe ?? "").filter(
    ({ info }) => info === "diff",
  );
  if (blocks.length === 0) throw new Error(`DEVELOPERS.md has no steps under "${title}"`);
  return blocks.map(({ code }) => editsOf(code));
}

/** The files that steps change, with their new texts by path. */
export function follow(steps: readonly Step[]): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const { file, before, after } of steps.flat()) {
    if (before === "") {
      texts.set(file, after);
      continue;
    }
    const parts = (texts.get(file) ?? readFileSync(file, "utf8")).split(before);
    if (parts.length !== 2) {
      throw new Error(
        `${file} holds ${parts.length - 1} times what a recipe looks for:\n${before}`,
      );
    }
    texts.set(file, parts.join(after));
  }
  return texts;
}

function editsOf(block: string): readonly Edit[] {
  return block
    .split(/^\+\+\+ /m)
    .slice(1)
    .flatMap((part) => {
      const [file = "", ...lines] = part.trimEnd().split("\n");
      return lines
        .join("\n")
        .split(/^@@\n/m)
        .map((place) => {
          const kept = place.replaceAll(/^\+.*\n?/gm, "");
          return { file, before: withoutSigns(kept), after: withoutSigns(place) };
        });
    });
}

function withoutSigns(lines: string): string {
  return lines
    .trimEnd()
    .split("\n")
    .map((line) => `${line.slice(1)}\n`)
    .join("")
    .replace(/^\n$/, "");
}
