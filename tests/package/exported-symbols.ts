import ts from "typescript";
import { entries } from "./entries.js";

/** What the entry points export, as the compiler sees it. */
export interface ExportedSymbols {
  readonly checker: ts.TypeChecker;
  /** By what a user imports, such as `brow-geometry/units`; values and types, where they are declared. */
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
    const exported = checker.getExportsOfModule(module);
    return [specifier, exported.map((symbol) => declared(checker, symbol))] as const;
  });
  return { checker, symbols: new Map(symbols) };
}

/** Whether a name is there at run time. */
export function isValue({ flags }: ts.Symbol): boolean {
  return (flags & ts.SymbolFlags.Value) !== 0;
}

/** The symbol that stands behind the lists of the index files. */
export function declared(checker: ts.TypeChecker, symbol: ts.Symbol): ts.Symbol {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}
