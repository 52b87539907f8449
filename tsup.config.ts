import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import type { Options } from "tsup";
import ts from "typescript";
import manifest from "./package.json" with { type: "json" };

/** One entry for every subpath that the package exports: `./dist/units/index.js` comes from `src/units/index.ts`. */
const entry: string[] = Object.values(manifest.exports).flatMap((target) =>
  typeof target === "string"
    ? []
    : [target.import.default.replace("./dist/", "src/").replace(/\.js$/, ".ts")],
);

const shared: Options = { target: "es2022", silent: true };

const config: Options[] = [
  // One file a module, so that a bundler drops those that an app does not use, constants and all.
  { ...shared, entry: ["src/**/*.ts"], format: "esm", bundle: false, onSuccess: finishModules },
  // For Node, which would read hundreds of files at every start. What entries share stands in chunks of
  // its own, so that `GeometryError` is one class from all of them.
  { ...shared, entry, format: "esm", splitting: true, outDir: "dist/node" },
  { ...shared, entry, format: "cjs", splitting: true },
];

async function finishModules(): Promise<void> {
  takeVectorsAlone();
  await declareTypes();
}

/**
 * Lets bundlers drop what is not used of gl-matrix's pairs: from its root they come as one object, whole.
 * Node, whose entries are bundled apart, could not load the file that bundlers can.
 */
function takeVectorsAlone(): void {
  for (const path of readdirSync("dist/geometry", { recursive: true, encoding: "utf8" })) {
    if (!path.endsWith(".js")) continue;
    const text = readFileSync(`dist/geometry/${path}`, "utf8");
    const alone = text.replace(
      /import \{ vec2 \} from "gl-matrix";/,
      'import * as vec2 from "gl-matrix/esm/vec2.js";',
    );
    if (alone !== text) writeFileSync(`dist/geometry/${path}`, alone);
  }
}

/** Writes each module's types for `import` and for `require`; isolated declarations ask for no more than its text. */
function declareTypes(): Promise<void> {
  const modules = readdirSync("src", { recursive: true, encoding: "utf8" });
  for (const path of modules.filter((path) => path.endsWith(".ts"))) {
    const { outputText } = ts.transpileDeclaration(readFileSync(`src/${path}`, "utf8"), {
      fileName: path,
      compilerOptions: { isolatedDeclarations: true, verbatimModuleSyntax: true },
    });
    const types = `dist/${path.replace(/\.ts$/, "")}.d`;
    mkdirSync(dirname(types), { recursive: true });
    writeFileSync(`${types}.ts`, outputText);
    writeFileSync(
      `${types}.cts`,
      outputText.replaceAll(/(?<=\bfrom |\bimport\()"(\..+)\.js"/g, '"$1.cjs"'),
    );
  }
  return Promise.resolve();
}

export default config;
