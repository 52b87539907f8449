import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { build, type Plugin } from "esbuild";
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
  await takeVectorsAlone();
  await declareTypes();
}

/**
 * Gives modules their vectors without the rest of gl-matrix: from its root they come as one object, whole, and
 * from its own file with what that runs when it is loaded. Node, whose entries are bundled apart, loads its root.
 */
async function takeVectorsAlone(): Promise<void> {
  for (const path of readdirSync("dist/geometry", { recursive: true, encoding: "utf8" })) {
    const file = `dist/geometry/${path}`;
    if (!path.endsWith(".js") || !readFileSync(file, "utf8").includes('"gl-matrix"')) continue;
    await build({
      stdin: {
        contents: readFileSync(file, "utf8").replace(
          'import { vec2 } from "gl-matrix";',
          'import * as vec2 from "gl-matrix/esm/vec2.js";',
        ),
        resolveDir: dirname(file),
      },
      outfile: file,
      allowOverwrite: true,
      bundle: true,
      format: "esm",
      target: "es2022",
      banner: {
        js: "/* Holds functions of gl-matrix, MIT, © Brandon Jones, Colin MacKenzie IV */",
      },
      plugins: [vectorsOnly],
    });
  }
}

/** Takes in nothing but gl-matrix, without the loop that it makes when its file is loaded. */
const vectorsOnly: Plugin = {
  name: "vectors-only",
  setup: (bundling) => {
    bundling.onResolve({ filter: /^\./ }, ({ path, importer }) =>
      importer.includes("gl-matrix") ? undefined : { path, external: true },
    );
    bundling.onLoad({ filter: /gl-matrix.esm.vec2\.js$/ }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replace(
        "export var forEach = function",
        "export var forEach = /* @__PURE__ */ function",
      ),
    }));
  },
};

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
