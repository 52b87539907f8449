import { format } from "prettier";
import ts from "typescript";
import { exportedSymbols, isValue } from "../package/exported-symbols.js";

/** The page of public names, section by section, each under what a user imports. */
export async function namesPage(): Promise<ReadonlyMap<string, string>> {
  const { checker, symbols } = exportedSymbols();
  const [[root = "", ofRoot = []] = []] = symbols;
  const sections = await Promise.all(
    Array.from(symbols, async ([specifier, exported]) => {
      const again = specifier === root ? [] : exported.filter((symbol) => ofRoot.includes(symbol));
      const text = sectionOf(checker, specifier, exported, again);
      return [specifier, await format(text, { parser: "markdown" })] as const;
    }),
  );
  return new Map(sections);
}

/** What stands above the sections. */
export const NAMES_HEAD = `# Public names

Written by \`npm run names\` from what the entry points export and from the first sentence of each doc
comment. The root holds what takes a face to a plan, its check, picture, grade and record; the other
entry points hold the parts.
`;

function sectionOf(
  checker: ts.TypeChecker,
  specifier: string,
  exported: readonly ts.Symbol[],
  inRoot: readonly ts.Symbol[],
): string {
  const own = inOrder(exported.filter((symbol) => !inRoot.includes(symbol)));
  const values = exported.filter(isValue).length;
  const lines = own.map((symbol) => `- \`${symbol.name}\`: ${firstSentence(checker, symbol)}`);
  const again = inOrder(inRoot).map(({ name }) => `\`${name}\``);
  return [
    `## ${specifier}`,
    `${values} functions and constants, ${exported.length - values} types.`,
    again.length === 0 ? "" : `In the root too: ${again.join(", ")}.`,
    lines.join("\n"),
  ].join("\n\n");
}

/** Values before types, each by the alphabet. */
function inOrder(symbols: readonly ts.Symbol[]): readonly ts.Symbol[] {
  return [...symbols].sort(
    (one, other) =>
      Number(isValue(other)) - Number(isValue(one)) || one.name.localeCompare(other.name, "en"),
  );
}

function firstSentence(checker: ts.TypeChecker, symbol: ts.Symbol): string {
  const text = ts.displayPartsToString(symbol.getDocumentationComment(checker));
  const [paragraph = ""] = text.split("\n\n");
  const [sentence = ""] = paragraph.replace(/\s+/g, " ").split(/(?<=[.:])\s(?=[A-Z])/);
  return sentence.replaceAll(/\{@link (\w+) ?\}/g, "`$1`").replace(/:$/, ".");
}
