import ts from "typescript";
import { describe, expect, it } from "vitest";
import { exportedSymbols } from "../package/exported-symbols.js";

/** What a reader is told about a public name. */
interface Documented {
  readonly name: string;
  readonly isFunction: boolean;
  readonly summary: string;
  readonly examples: readonly string[];
}

describe("doc comments of public names", () => {
  const documented = publicDocumentation();

  it("say what every name is", () => {
    expect(documented.filter(({ summary }) => summary === "").map(({ name }) => name)).toEqual([]);
  });

  it("show every function in exactly one example, a ts block", () => {
    const wrong = documented.filter(
      ({ isFunction, examples }) =>
        (isFunction && examples.length !== 1) ||
        examples.some((text) => !/^```ts\n[^`]+\n```$/.test(text)),
    );
    expect(wrong.map(({ name }) => name)).toEqual([]);
  });
});

function publicDocumentation(): readonly Documented[] {
  const { checker, symbols } = exportedSymbols();
  return Array.from(new Set([...symbols.values()].flat()), (symbol) => ({
    name: symbol.name,
    isFunction: (symbol.flags & ts.SymbolFlags.Function) !== 0,
    summary: ts.displayPartsToString(symbol.getDocumentationComment(checker)).trim(),
    examples: symbol
      .getJsDocTags(checker)
      .filter(({ name }) => name === "example")
      .map(({ text }) => ts.displayPartsToString(text).trim()),
  }));
}
