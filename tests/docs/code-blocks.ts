import { readdirSync, readFileSync } from "node:fs";

/** A fenced block of code in a Markdown file or in a doc comment. */
export interface CodeBlock {
  /** Path from the project's root. */
  readonly file: string;
  /** Line of the file that holds the first line of code, counted from 1. */
  readonly line: number;
  readonly code: string;
  /** What stands behind the opening fence, such as `ts` or `ts no-run`. */
  readonly info: string;
  readonly inDocComment: boolean;
}

/** Every fenced block that a reader meets: README, guides and doc comments of the sources. */
export function codeBlocks(): readonly CodeBlock[] {
  const guides = filesUnder("docs", ".md").filter((file) => !file.startsWith("docs/api/"));
  const pages = ["README.md", "DEVELOPERS.md", ...guides];
  return [
    ...pages.flatMap((file) => blocksOfMarkdown(file, textOf(file))),
    ...filesUnder("src", ".ts").flatMap((file) => blocksOfSource(file, textOf(file))),
  ];
}

export function blocksOfMarkdown(file: string, text: string): readonly CodeBlock[] {
  return fencedBlocks(file, text.split("\n"), 1, false);
}

export function blocksOfSource(file: string, text: string): readonly CodeBlock[] {
  return Array.from(text.matchAll(/^[ \t]*\/\*\*[\s\S]*?\*\//gm)).flatMap((comment) => {
    const firstLine = text.slice(0, comment.index).split("\n").length;
    const lines = comment[0].split("\n").map((line) => line.replace(/^\s*\* ?/, ""));
    return fencedBlocks(file, lines, firstLine, true);
  });
}

function fencedBlocks(
  file: string,
  lines: readonly string[],
  firstLine: number,
  inDocComment: boolean,
): readonly CodeBlock[] {
  const blocks: CodeBlock[] = [];
  let open: { fence: string; indent: string; info: string; start: number } | undefined;
  for (const [index, text] of lines.entries()) {
    const fence = /^(\s*)(`{3,})(.*)$/.exec(text);
    if (open === undefined && fence !== null) {
      const [, indent = "", ticks = "", info = ""] = fence;
      open = { fence: ticks, indent, info: info.trim(), start: index + 1 };
    } else if (open !== undefined && text.trim() === open.fence) {
      const { indent, info, start } = open;
      const code = lines.slice(start, index).map((line) => withoutIndent(line, indent));
      blocks.push({ file, line: firstLine + start, code: code.join("\n"), info, inDocComment });
      open = undefined;
    }
  }
  if (open !== undefined) throw new Error(`${file}:${firstLine + open.start}: unclosed fence`);
  return blocks;
}

function withoutIndent(line: string, indent: string): string {
  return line.startsWith(indent) ? line.slice(indent.length) : line.trimStart();
}

function textOf(file: string): string {
  return readFileSync(file, "utf8");
}

function filesUnder(folder: string, ending: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(ending))
    .map((path) => `${folder}/${path}`)
    .sort();
}
