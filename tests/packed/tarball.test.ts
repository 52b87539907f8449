import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Entry, entries } from "../package/entries.js";
import { codeBlocks } from "../docs/code-blocks.js";
import { runBlock } from "../docs/run-block.js";
import { requireFreshBuild } from "./fresh-build.js";

/** The packed library, installed in a folder that holds nothing else. */
let folder = "";
let packed: readonly string[] = [];

beforeAll(() => {
  requireFreshBuild();
  folder = mkdtempSync(join(tmpdir(), "brow-geometry-"));
  const report = run(
    "npm",
    ["pack", "--ignore-scripts", "--json", "--pack-destination", folder],
    ".",
  );
  const { filename, files } = tarballOf(report);
  packed = files.map(({ path }) => path);
  writeFileSync(join(folder, "package.json"), "{}");
  const quiet = ["--prefer-offline", "--no-audit", "--no-fund"];
  run("npm", ["install", ...quiet, `./${filename}`], folder);
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe("the packed library", () => {
  it("holds what is built, its manifest and its papers, and nothing else", () => {
    const papers = ["CHANGELOG.md", "DEVELOPERS.md", "LICENSE", "README.md", "package.json"];
    // The README reads the sample face and links to the guides.
    const beside =
      /^(?:dist\/.+\.(?:c?js|d\.c?ts)|docs\/[a-z-]+\.md|docs\/figures\/[a-z-]+\.svg|examples\/data\/sample-(?:face\.json|cohort\.csv))$/;
    expect(packed.filter((path) => !beside.test(path)).sort()).toEqual(papers);
    expect(packed).toContain("docs/conventions.md");
    expect(packed).toContain("examples/data/sample-face.json");
    expect(packed).toContain("examples/data/sample-cohort.csv");
  });

  it.each(
    codeBlocks()
      .filter(({ info, inDocComment }) => info === "ts" && !inDocComment)
      .map((block) => [`${block.file}:${block.line}`, block] as const),
  )("runs %s", async (_, block) => {
    const require = createRequire(join(folder, "reader.cjs"));
    const files = join(folder, "node_modules/brow-geometry");
    const load = (specifier: string): Promise<object> =>
      Promise.resolve(require(specifier) as object);
    await runBlock(block, { load, files });
  });

  it("shows the same names by import and by require, from every entry point", () => {
    const byImport = runProgram("consumer.mjs", `${imports("import")}${printNames}`);
    const byRequire = runProgram("consumer.cjs", `${imports("require")}${printNames}`);
    const names = JSON.parse(byImport) as readonly (readonly string[])[];
    expect(names).toHaveLength(entries.length);
    expect(names.filter((list) => list.length === 0)).toEqual([]);
    expect(JSON.parse(byRequire)).toEqual(names);
  });

  it("gives Node its root in a few files, and bundlers one for each module", () => {
    const resolved = runProgram("root.mjs", 'console.log(import.meta.resolve("brow-geometry"));');
    const forNode = fileURLToPath(resolved.trim());
    const forBundlers = join(folder, "node_modules/brow-geometry/dist/index.js");
    expect(filesFrom([forNode]).size).toBeLessThan(30);
    expect(filesFrom([forBundlers]).size).toBeGreaterThan(200);
  });

  it.each(["import", "require"] as const)("has one GeometryError by %s", (way) => {
    const program = `${imports(way)}
      const [root, ...folders] = modules;
      const copies = folders.filter((folder) => "GeometryError" in folder);
      let thrown;
      try {
        const { lineThrough } = modules[specifiers.indexOf("brow-geometry/geometry")];
        lineThrough([1, 2], [1, 2]);
      } catch (error) {
        thrown = error;
      }
      console.log(JSON.stringify({
        copies: copies.length,
        same: copies.every((copy) => copy.GeometryError === root.GeometryError),
        thrown: thrown instanceof root.GeometryError,
      }));`;
    const found = JSON.parse(runProgram(way === "import" ? "error.mjs" : "error.cjs", program)) as {
      copies: number;
    };
    expect(found).toEqual({ copies: found.copies, same: true, thrown: true });
    expect(found.copies).toBeGreaterThan(0);
  });

  it("compiles in a user's modules of both kinds, types of dependencies checked", () => {
    const files = ["user.mts", "user.cts"];
    for (const file of files) writeFileSync(join(folder, file), typedUse(file));
    const options = ["--noEmit", "--strict", "--module", "nodenext", "--target", "es2022"];
    const compiler = resolve("node_modules/typescript/bin/tsc");
    expect(run(process.execPath, [compiler, ...options, ...files], folder)).toBe("");
  });

  it.each(entries.filter(({ specifier }) => !specifier.endsWith("/schema")))(
    "needs no other package's types in $specifier",
    (entry) => {
      expect(packagesInTypes(entry)).toEqual([]);
    },
  );
});

const printNames = "console.log(JSON.stringify(modules.map((one) => Object.keys(one).sort())));";

function imports(way: "import" | "require"): string {
  const specifiers = JSON.stringify(entries.map(({ specifier }) => specifier));
  const each =
    way === "import"
      ? "await Promise.all(specifiers.map((specifier) => import(specifier)))"
      : "specifiers.map((specifier) => require(specifier))";
  return `const specifiers = ${specifiers};\nconst modules = ${each};\n`;
}

function typedUse(file: string): string {
  const lines = entries.map(({ specifier }, index) =>
    file.endsWith(".mts")
      ? `import * as entry${index} from "${specifier}";`
      : `import entry${index} = require("${specifier}");`,
  );
  return `${lines.join("\n")}
    export const point: entry0.FlatPoint<"mm"> = entry0.mm([1, 2]);
    // @ts-expect-error a point of the face is none of the photo
    export const mixed: entry0.FlatPoint<"px"> = entry0.mm([1, 2]);
    export const used: unknown[] = [${entries.map((_, index) => `entry${index}`).join(", ")}];`;
}

function runProgram(file: string, text: string): string {
  writeFileSync(join(folder, file), text);
  return run(process.execPath, [file], folder);
}

/** The packages that the installed types of an entry point import, by whatever way. */
function packagesInTypes({ types }: Entry): readonly string[] {
  const files = types.map((path) => join(folder, "node_modules/brow-geometry", path));
  return [...filesFrom(files)].flatMap(importsOf).filter((name) => !name.startsWith("."));
}

/** Files of the library that are reached from these, themselves among them. */
function filesFrom(roots: readonly string[]): ReadonlySet<string> {
  const files = new Set(roots);
  for (const file of files) {
    for (const name of importsOf(file)) {
      if (!name.startsWith(".")) continue;
      const target = join(dirname(file), name);
      files.add(/\.d\.c?ts$/.test(file) ? target.replace(/\.(c?)js$/, ".d.$1ts") : target);
    }
  }
  return files;
}

function importsOf(file: string): readonly string[] {
  return ts
    .preProcessFile(readFileSync(file, "utf8"))
    .importedFiles.map(({ fileName }) => fileName);
}

function tarballOf(report: string): { filename: string; files: readonly { path: string }[] } {
  const [tarball] = JSON.parse(report) as ReturnType<typeof tarballOf>[];
  if (tarball === undefined) throw new Error("npm packed nothing");
  return tarball;
}

function run(command: string, args: readonly string[], cwd: string): string {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: "utf8" });
  if (status !== 0) throw new Error(`${command} ${args.join(" ")}\n${stdout}${stderr}`);
  return stdout;
}
