import ts from "typescript";
import { expect, it } from "vitest";
import { exportedSymbols, declared, isValue } from "../package/exported-symbols.js";
import { codeBlocks } from "./code-blocks.js";

const running: string = codeBlocks()
  .filter(({ info }) => info === "ts")
  .map(({ code }) => code)
  .join("\n");
const { checker, symbols } = exportedSymbols();
const everyName: ReadonlySet<ts.Symbol> = new Set([...symbols.values()].flat());

it("shows every function and constant in a guide or in an example that runs", () => {
  const unseen = [...everyName].filter((symbol) => isValue(symbol) && !isShown(symbol));
  expect(unseen.map(({ name }) => name)).toEqual([]);
});

it("shows every type in an example that runs, or where one that is shown names it", () => {
  const met = new Set<ts.Symbol>();
  const meet = (symbol: ts.Symbol): void => {
    if (met.has(symbol)) return;
    met.add(symbol);
    symbol.declarations?.forEach((declaration) => namesIn(declaration).forEach(meet));
  };
  [...everyName].filter(isShown).forEach(meet);
  expect([...everyName].filter((symbol) => !met.has(symbol)).map(({ name }) => name)).toEqual([]);
});

function isShown({ name }: ts.Symbol): boolean {
  return new RegExp(`\\b${name}\\b`).test(running);
}

/** Types and constants that a declaration names, but for what happens inside of a function. */
function namesIn(declaration: ts.Declaration): readonly ts.Symbol[] {
  const found: ts.Symbol[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isBlock(node)) return;
    if (ts.isIdentifier(node)) {
      const symbol = checker.getSymbolAtLocation(node);
      if (symbol !== undefined) found.push(declared(checker, symbol));
    }
    ts.forEachChild(node, visit);
  };
  visit(declaration);
  return found;
}
