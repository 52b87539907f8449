import { posix } from "node:path";
import ts from "typescript";

/** The floors of the house: a folder imports only folders of lower floors. */
const floors: ReadonlyMap<string, number> = new Map([
  ["units", 1],
  ["geometry", 2],
  ["landmarks", 3],
  ["files", 3],
  ["calibration", 4],
  ["symmetry", 4],
  ["proportions", 4],
  ["mapping", 5],
  ["capture", 5],
  ["drawing", 6],
  ["grading", 6],
  ["cohort", 6],
  ["schema", 7],
  ["cli", 8],
]);

/** Above this floor the schemas know types only: they describe data and compute nothing. */
const HIGHEST_FLOOR_OF_SCHEMA_VALUES = 3;

/** The one folder that may import a package, by this name. */
const homeOfPackage: ReadonlyMap<string, string> = new Map([
  ["gl-matrix", "geometry"],
  ["papaparse", "files"],
  ["pure-rand/distribution/uniformFloat64", "units"],
  ["pure-rand/generator/xoroshiro128plus", "units"],
  ["zod", "schema"],
  ["zod/mini", "schema"],
]);

const roomsWithoutTopic = /^(utils?|helpers?|common|misc|types)$/;

interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
}

/** What a source file does against the rules of the house; `file` is its path from the root. */
export function violations(file: string, text: string): readonly string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const names = file.replace(/\.ts$/, "").split("/");
  return [
    ...names.filter((name) => roomsWithoutTopic.test(name)).map((name) => `${name} names no topic`),
    ...source.statements
      .filter((statement) => ts.isExportDeclaration(statement) && !statement.exportClause)
      .map(() => "export * hides the names"),
    ...importsOf(source).flatMap((one) => violationOf(file, one) ?? []),
  ].map((violation) => `${file}: ${violation}`);
}

function violationOf(file: string, { specifier, typeOnly }: Import): string | undefined {
  const folder = folderOf(file);
  if (!specifier.startsWith(".")) return packageViolation(folder, specifier);
  const target = posix.join(posix.dirname(file), specifier);
  const from = folderOf(target);
  if (!target.endsWith(".js")) return `${specifier} lacks the ending .js`;
  if (from === undefined) return `${specifier} is outside of the folders`;
  if (from === folder) {
    return target === `src/${folder}/index.js` ? "a folder imports its own index" : undefined;
  }
  if (target !== `src/${from}/index.js`) return `${specifier} goes past the index of ${from}`;
  return floorViolation(folder, from, typeOnly);
}

function packageViolation(folder: string | undefined, specifier: string): string | undefined {
  if (folder === "cli" || homeOfPackage.get(specifier) === folder) return undefined;
  return `${folder ?? "the root"} imports ${specifier}`;
}

function floorViolation(
  folder: string | undefined,
  from: string,
  typeOnly: boolean,
): string | undefined {
  const below = floors.get(from);
  if (below === undefined) return `${from} has no floor`;
  if (folder === undefined) {
    return from === "schema" || from === "cli" ? `the root imports ${from}` : undefined;
  }
  const own = floors.get(folder);
  if (own === undefined) return `${folder} has no floor`;
  if (below >= own) return `${folder} (floor ${own}) imports ${from} (floor ${below})`;
  return folder === "schema" && below > HIGHEST_FLOOR_OF_SCHEMA_VALUES && !typeOnly
    ? `schema imports more than types from ${from}`
    : undefined;
}

/** The folder of a file of the sources; none for the root's own index. */
function folderOf(file: string): string | undefined {
  return /^src\/([^/]+)\//.exec(file)?.[1];
}

function importsOf(source: ts.SourceFile): readonly Import[] {
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    const one = importOf(node);
    if (one !== undefined) found.push(one);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function importOf(node: ts.Node): Import | undefined {
  if (ts.isImportDeclaration(node)) {
    return imported(node.moduleSpecifier, isTypeOnly(node.importClause));
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined) {
    return imported(node.moduleSpecifier, node.isTypeOnly);
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    return imported(node.argument.literal, true);
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return imported(node.arguments[0], false);
  }
  return undefined;
}

function imported(specifier: ts.Node | undefined, typeOnly: boolean): Import {
  if (specifier === undefined || !ts.isStringLiteralLike(specifier)) {
    throw new Error("the rules cannot follow an import whose name is computed");
  }
  return { specifier: specifier.text, typeOnly };
}

function isTypeOnly(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const { name, namedBindings } = clause;
  return (
    name === undefined &&
    namedBindings !== undefined &&
    ts.isNamedImports(namedBindings) &&
    namedBindings.elements.every((element) => element.isTypeOnly)
  );
}
