import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Readable, Writable } from "node:stream";
import { build } from "esbuild";
import { faceFrame, requirePlannable, scaleFromIris, toFace } from "brow-geometry";
import { foundFace, londonFaces } from "../../tests/support/london-faces.js";
import { syntheticFace } from "../../tests/support/synthetic-face.js";
import { intoPage, table } from "../accuracy/page.js";

// What a changed pin costs in a browser, beside the full plan: `npm run bench:browser`. It needs Chromium, the program
// `chromium` or what CHROMIUM names.

const BATCHES = 15;
/** Plans in a batch: each has its pin elsewhere. */
const PLANS = 30;
/** Batches before reading: for so long V8 still compiles what a plan calls. */
const WARMING = 20;

/** What is timed, as it runs in the page; `at` is where the pin lies. */
const CASES = {
  "preview with a changed pin, and its picture":
    "lib.drawPlan(lib.planBrows(face, pinned(at), { preview: true }))",
  "plan with a changed pin, and its picture": "lib.drawPlan(lib.planBrows(face, pinned(at)))",
};

const [, , , , found] = londonFaces();
if (found === undefined) throw new Error("the fixture holds fewer faces than it should");
const mesh = requirePlannable(foundFace(found, "mesh-478"));
const FACES = {
  "by hand": requirePlannable(syntheticFace()),
  "face mesh": requirePlannable(toFace(mesh, faceFrame(mesh, scaleFromIris(mesh)))),
};

const scratch = mkdtempSync(join(tmpdir(), "brow-geometry-"));
const browser = started(scratch);
try {
  const ask = speaking(browser);
  const { targetId } = await ask("Target.createTarget", { url: "about:blank" });
  const { sessionId } = await ask("Target.attachToTarget", { targetId, flatten: true });
  const page = (method: string, parameters: object = {}): Promise<Answer> =>
    ask(method, parameters, String(sessionId));
  const run = async (expression: string): Promise<void> => {
    const { exceptionDetails } = await page("Runtime.evaluate", { expression });
    if (exceptionDetails !== undefined) throw new Error(JSON.stringify(exceptionDetails));
  };
  await page("Performance.enable", { timeDomain: "threadTicks" });
  await run(await libraryForPages());
  const rows: string[][] = [];
  for (const [name, work] of Object.entries(CASES)) {
    const times: string[] = [];
    for (const face of Object.values(FACES)) {
      await run(`var face = ${JSON.stringify(face)}; var start = face.left.brow.upper.at(-4);
        var pinned = (at) => ({ pins: [{ side: "left", dot: "upperArch", at }] });
        var batch = () => { for (let i = 0; i < ${PLANS}; i += 1) {
          const at = [start[0] + 0.01 * i, start[1] + 0.01 * i]; ${work}; } };`);
      for (let round = 0; round < WARMING; round += 1) await run("batch()");
      const readings: number[] = [];
      for (let round = 0; round < BATCHES; round += 1) {
        const before = await busy(page);
        await run("batch()");
        readings.push((1000 * ((await busy(page)) - before)) / PLANS);
      }
      const median = readings.sort((one, other) => one - other)[Math.floor(BATCHES / 2)] as number;
      times.push(median.toPrecision(2));
    }
    rows.push([name, ...times]);
  }
  const text = table(["", ...Object.keys(FACES).map((name) => `${name}, ms`)], rows);
  console.log(text);
  const file = resolve("docs/performance.md");
  writeFileSync(file, intoPage(readFileSync(file, "utf8"), { browser: text }));
} finally {
  browser.kill();
  await new Promise((done) => browser.once("exit", done));
  rmSync(scratch, { recursive: true, force: true });
}

type Answer = Readonly<Record<string, unknown>>;

/** Seconds of CPU that the page's own thread has taken. */
async function busy(page: (method: string) => Promise<Answer>): Promise<number> {
  const { metrics } = await page("Performance.getMetrics");
  const found = (metrics as readonly { name: string; value: number }[]).find(
    ({ name }) => name === "TaskDuration",
  );
  if (found === undefined) throw new Error("the browser does not say how long its tasks take");
  return found.value;
}

async function libraryForPages(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: ["src/index.ts"],
    bundle: true,
    minify: true,
    format: "iife",
    globalName: "lib",
    write: false,
  });
  return (outputFiles[0]?.text ?? "").replace(/^(?:"use strict";)?var lib/, "var lib");
}

/** The browser without a window; it listens on its third pipe and answers on its fourth. */
function started(profile: string): ChildProcess {
  const own = [`--user-data-dir=${profile}`, "--remote-debugging-pipe"];
  return spawn(process.env.CHROMIUM ?? "chromium", ["--headless", "--no-sandbox", ...own], {
    stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"],
  });
}

/** Asks the browser, by the protocol of its developer tools: messages in JSON, each ended by a zero. */
function speaking({
  stdio,
}: ChildProcess): (method: string, params?: object, sessionId?: string) => Promise<Answer> {
  const [to, from] = [stdio[3] as Writable, stdio[4] as Readable];
  const waiting = new Map<number, (answer: { result?: Answer; error?: unknown }) => void>();
  let rest = "";
  from.setEncoding("utf8").on("data", (chunk: string) => {
    const messages = (rest + chunk).split("\0");
    rest = messages.pop() ?? "";
    for (const message of messages) {
      const answer = JSON.parse(message) as { id?: number; result?: Answer; error?: unknown };
      if (answer.id !== undefined) waiting.get(answer.id)?.(answer);
    }
  });
  return (method, params = {}, sessionId) =>
    new Promise((done, failed) => {
      const id = waiting.size + 1;
      waiting.set(id, ({ result, error }) => {
        if (result === undefined) failed(new Error(JSON.stringify(error)));
        else done(result);
      });
      to.write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    });
}
