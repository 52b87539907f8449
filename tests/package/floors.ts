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
  ["capture", 5],
  ["mapping", 6],
  ["grading", 7],
  ["words", 8],
  ["drawing", 9],
  ["schema", 10],
]);

/** Rooms of a floor's crowded folders: a room imports only itself and rooms that stand before it. */
const rooms: ReadonlyMap<string, readonly string[]> = new Map([
  ["units", ["quantities", "uncertainty", "decisions"]],
  ["geometry", ["lines", "polylines", "curves", "fits"]],
  ["landmarks", ["face", "skin", "errors", "markups"]],
  ["symmetry", ["midline", "mirroring", "frame", "comparison"]],
  [
    "mapping",
    [
      "choices",
      "dots",
      "shape",
      "plan",
      "drawn",
      "weighing",
      "wishes",
      "areas",
      "record",
      "visits",
    ],
  ],
  ["words", ["catalogue", "english", "spanish", "anatomical", "telling"]],
  ["drawing", ["canvas", "layers", "sheet", "pictures"]],
]);

/** Above this floor the schemas know types and tables only: they describe data and compute nothing. */
const HIGHEST_FLOOR_OF_SCHEMA_FUNCTIONS = 3;

/** Tables are constants, and constants stand in capitals. */
const table = /^[A-Z][A-Z0-9_]*$/;

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
  /** Names of what is no type; unknown where all of it is imported. */
  readonly values: readonly string[] | "all";
}

/** What a source file does against the rules of the house; `file` is its path from the root. */
export function violations(file: string, text: string): readonly string[] {
  const source = parse(file, text);
  const names = file.replace(/\.ts$/, "").split("/");
  return [
    ...names.filter((name) => roomsWithoutTopic.test(name)).map((name) => `${name} names no topic`),
    ...source.statements
      .filter((statement) => ts.isExportDeclaration(statement) && !statement.exportClause)
      .map(() => "export * hides the names"),
    ...importsOf(source).flatMap((one) => violationOf(file, one) ?? []),
  ].map((violation) => `${file}: ${violation}`);
}

function violationOf(file: string, { specifier, values }: Import): string | undefined {
  const folder = folderOf(file);
  if (!specifier.startsWith(".")) return packageViolation(folder, specifier);
  const target = targetOf(file, specifier);
  const from = folderOf(target);
  if (!target.endsWith(".js")) return `${specifier} lacks the ending .js`;
  if (from === undefined) return `${specifier} is outside of the folders`;
  if (from === folder) {
    return isList(folder, target) ? "a folder imports its own index" : roomViolation(file, target);
  }
  if (!isList(from, target)) return `${specifier} goes past the index of ${from}`;
  return floorViolation(folder, from, values);
}

/** What a folder gives to everybody, and what to other folders only. */
function isList(folder: string, target: string): boolean {
  return target === `src/${folder}/index.js` || target === `src/${folder}/internal.js`;
}

function packageViolation(folder: string | undefined, specifier: string): string | undefined {
  if (homeOfPackage.get(specifier) === folder) return undefined;
  return `${folder ?? "the root"} imports ${specifier}`;
}

function floorViolation(
  folder: string | undefined,
  from: string,
  values: Import["values"],
): string | undefined {
  const below = floors.get(from);
  if (below === undefined) return `${from} has no floor`;
  if (folder === undefined) {
    return from === "schema" ? "the root imports schema" : undefined;
  }
  const own = floors.get(folder);
  if (own === undefined) return `${folder} has no floor`;
  if (below >= own) return `${folder} (floor ${own}) imports ${from} (floor ${below})`;
  return folder === "schema" && below > HIGHEST_FLOOR_OF_SCHEMA_FUNCTIONS && !areTables(values)
    ? `schema imports more than types and tables from ${from}`
    : undefined;
}

function areTables(values: Import["values"]): boolean {
  return values !== "all" && values.every((name) => table.test(name));
}

function roomViolation(file: string, target: string): string | undefined {
  const [folder, room] = placeOf(file);
  const order = rooms.get(folder);
  if (order === undefined || room === undefined) return undefined;
  const [, next] = placeOf(target);
  const [own, other] = [order.indexOf(room), order.indexOf(next ?? "")];
  if (own < 0) return `${room} is no room of ${folder}`;
  if (other < 0) return `${next ?? "the folder"} is no room of ${folder}`;
  return other > own ? `${room} imports ${order[other]}, a later room` : undefined;
}

/** Folder and room of a file of the sources; no room for a folder's own index. */
function placeOf(file: string): readonly [folder: string, room: string | undefined] {
  const [, folder = "", ...rest] = file.split("/");
  return [folder, rest.length > 1 ? rest[0] : undefined];
}

/** Imports between files that lead back to where they began, each as the files on the way. */
export function circles(texts: ReadonlyMap<string, string>): readonly (readonly string[])[] {
  const state = new Map<string, "open" | "done">();
  const found: (readonly string[])[] = [];
  const visit = (file: string, way: readonly string[]): void => {
    if (state.get(file) === "open") found.push([...way.slice(way.indexOf(file)), file]);
    if (state.has(file)) return;
    state.set(file, "open");
    for (const { specifier } of importsOf(parse(file, texts.get(file) ?? ""))) {
      if (specifier.startsWith(".")) {
        visit(targetOf(file, specifier).replace(/\.js$/, ".ts"), [...way, file]);
      }
    }
    state.set(file, "done");
  };
  for (const file of texts.keys()) visit(file, []);
  return found;
}

/** Names of files that differ only by the order of their words or by a plural, in groups. */
export function twinNames(files: readonly string[]): readonly (readonly string[])[] {
  const words = files.map((file) => wordsOf(posix.basename(file, ".ts")));
  const groups = new Set(words.filter((one, index) => words.indexOf(one) !== index));
  return [...groups].map((group) => files.filter((_, index) => words[index] === group));
}

function wordsOf(name: string): string {
  return name
    .split("-")
    .map((word) => word.replace(/s$/, ""))
    .sort()
    .join(" ");
}

function targetOf(file: string, specifier: string): string {
  return posix.join(posix.dirname(file), specifier);
}

function parse(file: string, text: string): ts.SourceFile {
  return ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
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
    return imported(node.moduleSpecifier, valuesOf(node.importClause));
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined) {
    return imported(node.moduleSpecifier, node.isTypeOnly ? [] : "all");
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    return imported(node.argument.literal, []);
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return imported(node.arguments[0], "all");
  }
  return undefined;
}

function imported(specifier: ts.Node | undefined, values: Import["values"]): Import {
  if (specifier === undefined || !ts.isStringLiteralLike(specifier)) {
    throw new Error("the rules cannot follow an import whose name is computed");
  }
  return { specifier: specifier.text, values };
}

function valuesOf(clause: ts.ImportClause | undefined): Import["values"] {
  if (clause?.phaseModifier === ts.SyntaxKind.TypeKeyword) return [];
  const named = clause?.namedBindings;
  if (clause?.name !== undefined || named === undefined || !ts.isNamedImports(named)) return "all";
  return named.elements
    .filter(({ isTypeOnly }) => !isTypeOnly)
    .map(({ propertyName, name }) => (propertyName ?? name).text);
}
