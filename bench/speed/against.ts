import { execFileSync } from "node:child_process";
import type { HeapProfiler } from "node:inspector";
import { Session } from "node:inspector/promises";
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { intoPage, table } from "../accuracy/page.js";
import { bundled } from "./bundled.js";
import { casesOf, type Library } from "./cases.js";

// How long one face takes now and at an earlier revision, and how much memory it asks for, in one run:
// `npm run bench:against -- REVISION`.

const [revision] = process.argv.slice(2);
if (revision === undefined) throw new Error("needs a revision to compare with");

const ROUNDS = 9;
/** CPU that one reading of one case takes at least, in ms: clocks of the system are coarse. */
const LEAST = 60;
/** CPU that a case takes before it is read, in ms: for so long V8 still compiles what a plan calls. */
const WARMING = 2000;

const scratch = mkdtempSync(join(tmpdir(), "brow-geometry-"));
try {
  const before = casesOf(await libraryAt(revision));
  const now = casesOf(await bundled(resolve(".")));
  const rows: string[][] = [];
  for (const { name, run, nowOnly } of now) {
    const earlier = before.find((one) => one.name === name);
    warm(run);
    if (nowOnly === true || earlier === undefined) {
      const readings = Array.from({ length: ROUNDS }, () => cpuOf(run));
      const is = shown(Math.min(...readings));
      rows.push([name, "–", is, "–", "–", shown(await allocated(run))]);
      continue;
    }
    warm(earlier.run);
    // Objects of both have the same shapes: what one is seen to put into them throws away code compiled for the other.
    warm(run);
    warm(earlier.run);
    const readings = Array.from(
      { length: ROUNDS },
      () => [cpuOf(earlier.run), cpuOf(run)] as const,
    );
    const [was, is] = [0, 1].map((at) => Math.min(...readings.map((pair) => pair[at] as number)));
    const ratios = readings.map(([old, own]) => old / own).sort((one, other) => one - other);
    const ratio = ratios[Math.floor(ROUNDS / 2)] as number;
    const times = [shown(was as number), shown(is as number), ratio.toFixed(1)];
    rows.push([name, ...times, shown(await allocated(earlier.run)), shown(await allocated(run))]);
  }
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

function warm(run: () => unknown): void {
  const start = process.cpuUsage();
  while (process.cpuUsage(start).user < 1000 * WARMING) run();
}

/** CPU of one call, in ms. */
function cpuOf(run: () => unknown): number {
  for (let calls = 1; ; calls *= 2) {
    const start = process.cpuUsage();
    for (let call = 0; call < calls; call += 1) run();
    const { user, system } = process.cpuUsage(start);
    const spent = (user + system) / 1000;
    if (spent >= LEAST) return spent / calls;
  }
}

/** What one call puts on the heap, in MB, warm, by V8's sampling profiler: also what is collected at once. */
async function allocated(run: () => unknown): Promise<number> {
  const session = new Session();
  session.connect();
  await session.post("HeapProfiler.startSampling", {
    samplingInterval: 512,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  });
  for (let call = 0; call < ROUNDS; call += 1) run();
  const { profile } = await session.post("HeapProfiler.stopSampling");
  session.disconnect();
  const sizeOf = ({ selfSize, children }: HeapProfiler.SamplingHeapProfileNode): number =>
    children.reduce((sum, child) => sum + sizeOf(child), selfSize);
  return sizeOf(profile.head) / ROUNDS / 1e6;
}

async function libraryAt(commit: string): Promise<Library> {
  const archive = execFileSync("git", ["archive", commit, "src", "package.json", "tsconfig.json"], {
    maxBuffer: 2 ** 28,
  });
  execFileSync("tar", ["-x", "-C", scratch], { input: archive });
  symlinkSync(resolve("node_modules"), join(scratch, "node_modules"));
  return bundled(scratch);
}
