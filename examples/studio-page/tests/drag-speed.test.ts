import assert from "node:assert/strict";
import { describe, it } from "node:test";
import { mapPortrait, studio } from "./support/studio.js";

const { open } = studio();

const SLOWED = 4;
const MOVES = 60;

describe("under the finger", () => {
  it("a dragged dot draws every frame on a processor four times as slow", async (test) => {
    const page = await open();
    await mapPortrait(page);
    const client = await page.context().newCDPSession(page);
    // Time of the page's own thread: what else the machine does is not counted.
    await client.send("Performance.enable", { timeDomain: "threadTicks" });
    await client.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
    const spent = async () => {
      const { metrics } = await client.send("Performance.getMetrics");
      return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
    };
    const box = await page.locator('[data-handle="left upperArch"] .spot').boundingBox();
    assert.ok(box);
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    // What costs nothing at any speed: only the picture's own layer changes under the finger.
    await page.evaluate(() => {
      const still = document.querySelectorAll(".panel, .photo, header, nav");
      const watch = new MutationObserver((changes) => {
        document.body.dataset["changes"] = String(changes.length);
      });
      for (const one of still) {
        watch.observe(one, {
          subtree: true,
          childList: true,
          attributes: true,
          characterData: true,
        });
      }
    });
    await page.mouse.move(x, y);
    await page.mouse.down();
    const frames: number[] = [];
    for (let move = 1; move <= MOVES; move += 1) {
      const before = await spent();
      await page.mouse.move(x + 6 * Math.sin(move / 5), y - move / 6);
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(null))));
      frames.push((await spent()) - before);
    }
    assert.equal(await page.locator("body").getAttribute("data-changes"), null);
    await page.mouse.up();
    const sorted = frames.sort((one, other) => one - other);
    const median = sorted[MOVES / 2] ?? Number.NaN;
    const worst = sorted.at(-1) ?? Number.NaN;
    test.diagnostic(
      `a frame: ${median.toFixed(1)} ms at the median, ${worst.toFixed(1)} ms at worst`,
    );
    await page.context().close();
  });
});
