import type { Page } from "playwright-core";

/** A move of a finger is followed by a pause in which all that it caused is done. */
const MOVES = 60;
const PAUSE_MS = 60;

interface TraceEvent {
  readonly ph: string;
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  /** By the clock, and of the processor, in microseconds. */
  readonly dur: number;
  readonly tdur?: number;
  readonly args: { readonly data?: { readonly type?: string } };
}

const TASK = "ThreadControllerImpl::RunTask";

/** Milliseconds at the median. */
export interface Cost {
  /** By the clock, which counts whatever else runs on the machine. */
  readonly clock: number;
  /** Of the processor, which counts that hardly at all; while a thread is slowed, it spins, and this says nothing. */
  readonly processor: number;
}

/**
 * What a moved finger costs the page's own thread until it is drawn: the handler, the plan, style, layout, paint and
 * the handing over to the compositor, the page being so many times slower.
 */
export async function costOfDragging(page: Page, handle: string, slower: number): Promise<Cost> {
  const box = await page.locator(`[data-handle="${handle}"] .spot`).boundingBox();
  if (box === null) throw new Error(`There is no ${handle}.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const client = await page.context().newCDPSession(page);
  await client.send("Emulation.setCPUThrottlingRate", { rate: slower });
  // Straight to the browser: the driver looks for drags of its own at every move of its mouse.
  const touch = (
    type: "touchStart" | "touchMove" | "touchCancel",
    at?: readonly [number, number],
  ) =>
    client.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: at === undefined ? [] : [{ x: at[0], y: at[1] }],
    });
  const moveBy = async (moves: number) => {
    for (let move = 1; move <= moves; move += 1) {
      await touch("touchMove", [x + 6 * Math.sin(move / 5), y - 6 - move / 10]);
      await page.waitForTimeout(PAUSE_MS);
    }
  };
  await touch("touchStart", [x, y]);
  // What is compiled at first use is compiled.
  await moveBy(MOVES / 2);
  const browser = page.context().browser();
  await browser?.startTracing(page, { categories: ["toplevel", "devtools.timeline"] });
  await moveBy(MOVES);
  const trace = await browser?.stopTracing();
  await touch("touchCancel");
  await client.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  const { traceEvents } = JSON.parse(String(trace)) as { traceEvents: readonly TraceEvent[] };
  return {
    clock: median(costsIn(traceEvents, ({ dur }) => dur)),
    processor: median(costsIn(traceEvents, ({ tdur }) => tdur ?? Number.NaN)),
  };
}

/** From each move to the next, all that its thread has done. */
function costsIn(
  events: readonly TraceEvent[],
  timeOf: (task: TraceEvent) => number,
): readonly number[] {
  const moves = events
    .filter(({ name, args }) => name === "EventDispatch" && args.data?.type === "pointermove")
    .sort((one, other) => one.ts - other.ts);
  const tasks = events.filter(
    ({ ph, name, pid, tid }) =>
      ph === "X" && name === TASK && pid === moves[0]?.pid && tid === moves[0].tid,
  );
  // The move itself is part of a task that began before it.
  const starts = moves.map(({ ts }) =>
    Math.max(...tasks.filter((task) => task.ts <= ts).map((task) => task.ts)),
  );
  return starts.slice(1).map((end, index) => {
    const start = starts[index] ?? end;
    const between = tasks.filter(({ ts }) => ts >= start && ts < end);
    return between.reduce((sum, task) => sum + timeOf(task), 0) / 1000;
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
