import assert from "node:assert/strict";
import { describe, it } from "node:test";
import type { CDPSession, Page } from "playwright-core";
import { mapPortrait, studio } from "./support/studio.js";

const { open } = studio();

const SLOWED = 4;
const MOVES = 60;

/** What a move of the pointer costs the page's own thread until it is drawn, in milliseconds at the median. */
async function costOfMoves(page: Page, client: CDPSession, x: number, y: number): Promise<number> {
  const spent = async () => {
    const { metrics } = await client.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  };
  const costs: number[] = [];
  for (let move = 1; move <= MOVES; move += 1) {
    const before = await spent();
    await page.mouse.move(x + 6 * Math.sin(move / 5), y - move / 6);
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(null))));
    costs.push((await spent()) - before);
  }
  return costs.sort((one, other) => one - other)[MOVES / 2] ?? Number.NaN;
}

/** Notes on the body what changes in all that should hold still. */
async function watchStill(page: Page): Promise<void> {
  await page.evaluate(() => {
    const watch = new MutationObserver((changes) => {
      document.body.dataset["changes"] = String(changes.length);
    });
    const all = { subtree: true, childList: true, attributes: true, characterData: true };
    for (const one of document.querySelectorAll(".panel, .photo, header, nav")) {
      watch.observe(one, all);
    }
  });
}

describe("under the finger", () => {
  it("a dragged dot changes the picture's own layer and nothing else", async (test) => {
    const page = await open();
    await mapPortrait(page);
    const box = await page.locator('[data-handle="left upperArch"] .spot').boundingBox();
    assert.ok(box);
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const client = await page.context().newCDPSession(page);
    // Its time alone, not what else the machine does; but a slowed thread spins longer on a busy machine, so that
    // what is read here is told, and no limit.
    await client.send("Performance.enable", { timeDomain: "threadTicks" });
    await client.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
    const idle = await costOfMoves(page, client, x, y);

    await watchStill(page);
    await page.mouse.move(x, y);
    await page.mouse.down();
    const dragging = await costOfMoves(page, client, x, y);
    assert.equal(await page.locator("body").getAttribute("data-changes"), null);
    await page.mouse.up();
    test.diagnostic(
      `${SLOWED} times slower, a dragged frame costs ${dragging.toFixed(1)} ms at the median, reading it ${idle.toFixed(1)} ms of them`,
    );
    await page.context().close();
  });
});
