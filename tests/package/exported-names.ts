import ts from "typescript";
import { entries } from "./entries.js";

/** The names that each entry point exports, values and types, in alphabetical order. */
export function exportedNames(): Readonly<Record<string, readonly string[]>> {
  const sources = entries.map(({ source }) => source);
  const program = ts.createProgram(sources, {
    module: ts.ModuleKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    types: [],
  });
  const checker = program.getTypeChecker();
  return Object.fromEntries(
    entries.map(({ specifier, source }) => {
      const file = program.getSourceFile(source);
      const module = file === undefined ? undefined : checker.getSymbolAtLocation(file);
      if (module === undefined) throw new Error(`${source} is no module`);
      const names = checker.getExportsOfModule(module).map(({ name }) => name);
      return [specifier, names.sort((one, other) => one.localeCompare(other, "en"))];
    }),
  );
}
