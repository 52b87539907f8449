import { describe, expect, it } from "vitest";
import { codeBlocks } from "./code-blocks.js";
import { runBlock } from "./run-block.js";
import { typeErrors } from "./type-errors.js";

const blocks = codeBlocks();
const examples = blocks.filter(({ info }) => info === "ts");
const errors = typeErrors(examples);

describe("examples of README, guides and doc comments", () => {
  it.each(examples.map((block) => [`${block.file}:${block.line}`, block] as const))(
    "%s",
    async (_, block) => {
      expect(errors.get(block)).toEqual([]);
      await runBlock(block);
    },
  );

  it("all run, but for sketches of guides that import nothing", () => {
    const others = blocks
      .filter(({ info }) => /^(ts|tsx|typescript)\b/.test(info) && info !== "ts")
      .filter(
        ({ info, inDocComment, code }) =>
          info !== "ts no-run" || inDocComment || /\bimport\b/.test(code),
      );
    expect(others.map(({ file, line, info }) => `${file}:${line}: ${info}`)).toEqual([]);
  });
});
