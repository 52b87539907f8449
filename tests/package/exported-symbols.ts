import ts from "typescript";
import { entries } from "./entries.js";

/** What the entry points export, as the compiler sees it. */
export interface ExportedSymbols {
  readonly checker: ts.TypeChecker;
  /** By what a user imports, such as `brow-geometry/units`; values and types. */
  readonly symbols: ReadonlyMap<string, readonly ts.Symbol[]>;
}

export function exportedSymbols(): ExportedSymbols {
  const sources = entries.map(({ source }) => source);
  const program = ts.createProgram(sources, {
    module: ts.ModuleKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    types: [],
  });
  const checker = program.getTypeChecker();
  const symbols = entries.map(({ specifier, source }) => {
    const file = program.getSourceFile(source);
    const module = file === undefined ? undefined : checker.getSymbolAtLocation(file);
    if (module === undefined) throw new Error(`${source} is no module`);
    return [specifier, checker.getExportsOfModule(module)] as const;
  });
  return { checker, symbols: new Map(symbols) };
}

/** The names that each entry point exports, in alphabetical order. */
export function exportedNames(): Readonly<Record<string, readonly string[]>> {
  const { symbols } = exportedSymbols();
  const alphabetical = (one: string, other: string): number => one.localeCompare(other, "en");
  return Object.fromEntries(
    Array.from(symbols, ([specifier, exported]) => [
      specifier,
      exported.map(({ name }) => name).sort(alphabetical),
    ]),
  );
}
