import assert from "node:assert/strict";
import { describe, it } from "node:test";
import type { Page } from "playwright-core";
import { mapByRuler, mapPortrait, studio } from "./support/studio.js";

const { open } = studio();

/** What a frame may touch: a mark for each of 14 dots, both outlines with their edges, here and in the loupe, its view and aim. */
const MOST_NODES = 14 + 2 * 4 + 2;
const DOT = "left upperArch";

/** Notes on the body what changes in all that should hold still. */
async function watchStill(page: Page): Promise<void> {
  await page.evaluate(() => {
    const watch = new MutationObserver((changes) => {
      document.body.dataset["changes"] = String(changes.length);
    });
    const all = { subtree: true, childList: true, attributes: true, characterData: true };
    for (const one of document.querySelectorAll(".panel, .photo, .drawing, header, nav")) {
      watch.observe(one, all);
    }
  });
}

interface Frame {
  /** Elements that changed, those that came or went, and how often the same outline was drawn. */
  readonly nodes: number;
  readonly comings: number;
  readonly outlines: number;
  readonly labels: number;
}

/** Moves a finger that is down, several times between two frames, and says what both frames changed. */
async function framesOf(page: Page, handle: string): Promise<readonly Frame[]> {
  return page.evaluate(async (id) => {
    const frames: Frame[] = [];
    let changes: MutationRecord[] = [];
    const watch = new MutationObserver((more) => changes.push(...more));
    const live = document.querySelector("svg.live");
    const box = document.querySelector(`[data-handle="${id}"] .spot`)?.getBoundingClientRect();
    const stage = document.querySelector(".stage");
    if (live === null || box === undefined || stage === null) throw new Error(`There is no ${id}.`);
    watch.observe(stage, { subtree: true, childList: true, attributes: true });
    for (let frame = 0; frame < 20; frame += 1) {
      await new Promise((done) => requestAnimationFrame(done));
      changes = [];
      for (let move = 0; move < 5; move += 1) {
        const clientX = box.x + 4 * Math.sin(frame + move / 5);
        const clientY = box.y - 4 - move - frame / 4;
        live.dispatchEvent(new PointerEvent("pointermove", { clientX, clientY, bubbles: true }));
      }
      await new Promise((done) => requestAnimationFrame(done));
      await new Promise((done) => setTimeout(done));
      const outline = changes.find(({ target }) => (target as Element).matches(".live .planned"));
      frames.push({
        nodes: new Set(changes.map(({ target }) => target)).size,
        comings: changes.filter(({ type }) => type === "childList").length,
        outlines: changes.filter(({ target }) => target === outline?.target).length,
        labels: changes.filter(({ attributeName }) => attributeName === "aria-label").length,
      });
    }
    return frames;
  }, handle);
}

describe("under the finger", () => {
  for (const [name, makeMap] of Object.entries({ photo: mapPortrait, ruler: mapByRuler })) {
    it(`a dragged dot moves what moves, once a frame, and nothing else: ${name}`, async () => {
      const page = await open();
      await makeMap(page);
      const spot = page.locator(`[data-handle="${DOT}"] .spot`);
      const box = await spot.boundingBox();
      assert.ok(box);
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await page.mouse.down();
      await page.mouse.move(box.x + box.width / 2, box.y);
      await page.locator(".loupe").waitFor();
      assert.equal(await page.locator(".arrow").count(), 0, "moves are told of a plan at rest");
      await watchStill(page);
      const frames = await framesOf(page, DOT);
      assert.equal(await page.locator("body").getAttribute("data-changes"), null);
      assert.ok(
        frames.some(({ outlines }) => outlines > 0),
        "the outline follows",
      );
      for (const { nodes, comings, outlines, labels } of frames) {
        assert.ok(nodes <= MOST_NODES, `${nodes} elements changed`);
        assert.ok(outlines <= 2, "one plan a frame");
        assert.deepEqual([comings, labels], [0, 0]);
      }
      await page.mouse.up();
      await page.getByRole("button", { name: "Undo" }).click();

      await page.context().close();
    });
  }
});
