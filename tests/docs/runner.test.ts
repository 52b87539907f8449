import { describe, expect, it } from "vitest";
import { blocksOfMarkdown, blocksOfSource, type CodeBlock } from "./code-blocks.js";
import { runBlock } from "./run-block.js";
import { typeErrors } from "./type-errors.js";

function block(code: string): CodeBlock {
  return { file: "guide.md", line: 10, code, info: "ts", inDocComment: false };
}

describe("codeBlocks", () => {
  it("finds the blocks of a page with their lines", () => {
    const page = "# Title\n\n```ts\nlet a = 1;\na;\n```\n\n- item\n\n  ```sh\n  npm ci\n  ```\n";
    expect(blocksOfMarkdown("guide.md", page)).toEqual([
      { file: "guide.md", line: 4, code: "let a = 1;\na;", info: "ts", inDocComment: false },
      { file: "guide.md", line: 11, code: "npm ci", info: "sh", inDocComment: false },
    ]);
  });

  it("finds the blocks of doc comments with their lines", () => {
    const source =
      "const glob = 'a/**/b';\n/**\n * One.\n *\n * ```ts\n * one();\n *   two();\n * ```\n */\nexport {};\n";
    expect(blocksOfSource("one.ts", source)).toEqual([
      { file: "one.ts", line: 6, code: "one();\n  two();", info: "ts", inDocComment: true },
    ]);
  });

  it("refuses a block that nothing closes", () => {
    expect(() => blocksOfMarkdown("guide.md", "```ts\none();\n")).toThrow("guide.md:2: unclosed");
  });
});

describe("runBlock accepts", () => {
  it.each([
    ["a number to its printed decimals", "1.2346; // → 1.235"],
    ["an exact number", "3; // → 3"],
    ["a negative number", "-3.04; // → -3.0"],
    ["NaN, infinity and exponents", "[NaN, -Infinity, 1e-3]; // → [NaN, -Infinity, 1e-3]"],
    ["a text", '"start"; // → "start"'],
    ["a list", "[1, [2.04, 3]]; // → [1, [2.0, 3]]"],
    ["a typed array", "new Float64Array([1.5]); // → [1.5]"],
    [
      "an object by the keys that are printed",
      "({ a: 1, b: { c: 2, d: 3 } }); // → { b: { c: 2 } }",
    ],
    ["words", "[true, false, null, undefined]; // → [true, false, null, undefined]"],
    ["a declaration", "const a = 4; // → 4\nconst [b] = [a]; // → [4]\nb; // → 4"],
    ["what is printed", 'console.log(["moves"]); // → ["moves"]'],
    ["a statement of several lines", "[\n  1,\n  2,\n]; // → [1, 2]"],
    ["a comment on the next line", "1 + 1;\n// → 2\n2 + 2; // → 4"],
    ["a value of several lines", "({ a: 1, b: 2 });\n// → { a: 1,\n//     b: 2 }\n// And on.\n3;"],
    ["a value that is waited for", "await Promise.resolve(2); // → 2"],
    ["an error", "null!.toString(); // throws TypeError: Cannot read properties"],
    ["imports", 'import { basename } from "node:path";\nbasename("a/b"); // → "b"'],
    ["a default import", 'import path from "node:path";\npath.basename("a/b"); // → "b"'],
    ["the library", 'import { mm } from "brow-geometry";\nmm([1, 2]); // → [1, 2]'],
    ["a folder of it", 'import { mm } from "brow-geometry/units";\nmm(1); // → 1'],
  ])("%s", async (_, code) => {
    const claims = code.split("\n").filter((line) => /\/\/ (→|throws)/.test(line)).length;
    expect(await runBlock(block(code))).toBe(claims);
  });
});

describe("runBlock refuses", () => {
  it.each([
    ["a wrong number", "\n1.2; // → 1.3", "guide.md:11: value is 1.2, expected 1.3"],
    ["a number past half of the last decimal", "1.2351; // → 1.2340", "expected 1.2340"],
    ["a fraction printed as a whole number", "2.9; // → 3", "value is 2.9, expected 3"],
    ["NaN for a number", "NaN; // → 1.0", "value is NaN"],
    ["a number for a text", '1; // → "1"', "value is 1, expected '1'"],
    ["a wrong element", "[1, [2, 3]]; // → [1, [2, 4]]", "value[1][1] is 3, expected 4"],
    ["a list of another length", "[1, 2]; // → [1]", "value has 2 elements, expected 1"],
    ["a missing key", "({ a: 1 }); // → { b: 2 }", "value.b is undefined, expected 2"],
    ["nothing for an object", "undefined; // → { b: 2 }", "value is undefined, expected an object"],
    ["a wrong declaration", "const a = 4; // → 5", "value is 4, expected 5"],
    ["a wrong print", "console.log(4); // → 5", "value is 4, expected 5"],
    ["no error", "1; // throws TypeError: x", "nothing is thrown, expected TypeError"],
    ["another error", "null!.x; // throws RangeError: x", "TypeError is thrown"],
    ["another message", "null!.x; // throws TypeError: brow", 'expected "brow"'],
    ["an error without a message", "null!.x; // throws TypeError", "has to read"],
    ["an error that nobody expects", "null!.x;", "Cannot read properties of null"],
    [
      "a claim inside of a function",
      "() => {\n  1; // → 2\n};",
      "1 results are claimed, 0 of them",
    ],
    ["a claim behind a loop", "for (;;) break; // → 2", "only an expression"],
    ["a claim that is no literal", "1; // → one", '"one" is not a literal'],
    ["a claim with a unit", "1; // → 1 mm", '"1 mm" is not a literal'],
    ["a file of one's own", 'import "./mine.js";', "a reader has no file ./mine.js"],
  ])("%s", async (_, code, message) => {
    await expect(runBlock(block(code))).rejects.toThrow(message);
  });
});

describe("typeErrors", () => {
  it("names the line of a mistake, and keeps blocks apart", () => {
    const wrong = block('import { mm } from "brow-geometry/units";\nconst a = mm("54");');
    const right = {
      ...block('import { mm } from "brow-geometry/units";\nconst a = mm(54);'),
      line: 20,
    };
    const errors = typeErrors([wrong, right]);
    expect(errors.get(right)).toEqual([]);
    expect(errors.get(wrong)).toEqual([
      expect.stringMatching(/^guide\.md:11: No overload matches/),
    ]);
  });
});
