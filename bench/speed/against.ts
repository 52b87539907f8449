import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { intoPage, table } from "../accuracy/page.js";
import { casesOf, type Library } from "./cases.js";

// How long one face takes now and at an earlier revision, and how much memory it asks for, in one run:
// `npm run bench:against -- REVISION`, which gives Node the flags that memory is measured with.

const [revision] = process.argv.slice(2);
if (revision === undefined) throw new Error("needs a revision to compare with");

const ROUNDS = 9;
const { gc } = globalThis;
if (gc === undefined) throw new Error("needs node --expose-gc");

/** CPU that one reading of one case takes at least, in ms: clocks of the system are coarse. */
const LEAST = 60;

const scratch = mkdtempSync(join(tmpdir(), "brow-geometry-"));
try {
  const before = casesOf(await libraryAt(revision));
  const now = casesOf(await libraryHere());
  const rows = now.flatMap(({ name, run, nowOnly }) => {
    if (nowOnly === true) {
      const readings = Array.from({ length: ROUNDS }, () => cpuOf(run));
      return [[name, "–", shown(Math.min(...readings)), "–", "–", shown(allocated(run))]];
    }
    const earlier = before.find((one) => one.name === name);
    if (earlier === undefined) return [];
    const readings = Array.from(
      { length: ROUNDS },
      () => [cpuOf(earlier.run), cpuOf(run)] as const,
    );
    const [was, is] = [0, 1].map((at) => Math.min(...readings.map((pair) => pair[at] as number)));
    const ratios = readings.map(([old, own]) => old / own).sort((one, other) => one - other);
    const ratio = ratios[Math.floor(ROUNDS / 2)] as number;
    const times = [shown(was as number), shown(is as number), ratio.toFixed(1)];
    return [[name, ...times, shown(allocated(earlier.run)), shown(allocated(run))]];
  });
  const head = ["", `${revision}, ms`, "now, ms", "times as fast", `${revision}, MB`, "now, MB"];
  const text = table(head, rows);
  console.log(text);
  const page = resolve("docs/performance.md");
  writeFileSync(page, intoPage(readFileSync(page, "utf8"), { "one-face": text }));
} finally {
  rmSync(scratch, { recursive: true });
}

function shown(milliseconds: number): string {
  return milliseconds < 10 ? milliseconds.toPrecision(2) : milliseconds.toFixed(0);
}

/** CPU of one call, in ms, warm. */
function cpuOf(run: () => unknown): number {
  for (let calls = 1; ; calls *= 2) {
    const start = process.cpuUsage();
    for (let call = 0; call < calls; call += 1) run();
    const { user, system } = process.cpuUsage(start);
    const spent = (user + system) / 1000;
    if (spent >= LEAST) return spent / calls;
  }
}

/** What one call puts on the heap, in MB, warm: the young space is so large that nothing is collected meanwhile. */
function allocated(run: () => unknown): number {
  const readings = Array.from({ length: ROUNDS }, () => {
    gc?.();
    const before = process.memoryUsage().heapUsed;
    run();
    return (process.memoryUsage().heapUsed - before) / 1e6;
  });
  return readings.sort((one, other) => one - other)[Math.floor(ROUNDS / 2)] as number;
}

async function libraryAt(commit: string): Promise<Library> {
  const archive = execFileSync("git", ["archive", commit, "src", "package.json", "tsconfig.json"], {
    maxBuffer: 2 ** 28,
  });
  execFileSync("tar", ["-x", "-C", scratch], { input: archive });
  symlinkSync(resolve("node_modules"), join(scratch, "node_modules"));
  return bundled(scratch, "before.mjs");
}

async function libraryHere(): Promise<Library> {
  return bundled(resolve("."), "now.mjs");
}

async function bundled(root: string, name: string): Promise<Library> {
  const outfile = join(scratch, name);
  await build({
    stdin: {
      contents: 'export * from "./src/index.ts"; export * from "./src/mapping/index.ts";',
      resolveDir: root,
    },
    bundle: true,
    format: "esm",
    platform: "node",
    outfile,
    logLevel: "error",
  });
  return (await import(pathToFileURL(outfile).href)) as Library;
}
