import assert from "node:assert/strict";
import { describe, it } from "node:test";
import axe from "axe-core";
import type { Page } from "playwright-core";
import { choose, DESK, goTo, mapByRuler, PHONE, studio } from "./support/studio.js";

const { open } = studio();

async function violations(page: Page): Promise<readonly string[]> {
  const { violations: found } = await page.evaluate(() => window.axe.run());
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}

declare global {
  interface Window {
    readonly axe: typeof axe;
  }
}

describe("for everybody", () => {
  for (const [size, viewport] of Object.entries({ phone: PHONE, desk: DESK })) {
    for (const colorScheme of ["light", "dark"] as const) {
      it(`nothing is found by axe: ${size}, ${colorScheme}`, async () => {
        const page = await open({ ...viewport, colorScheme, reducedMotion: "reduce" });
        await page.evaluate(axe.source);
        assert.deepEqual(await violations(page), []);
        await page.getByRole("button", { name: "Look at an example" }).click();
        for (const tab of ["Map", "Face", "Shape", "Check", "Keep"]) {
          await goTo(page, tab);
          assert.deepEqual(await violations(page), [], tab);
        }
        await goTo(page, "Shape");
        await page.getByText("Other choices").click();
        await page.locator(".card").first().waitFor();
        assert.deepEqual(await violations(page), [], "other choices");
        await goTo(page, "Face");
        await choose(page, "Ruler");
        assert.deepEqual(await violations(page), [], "a ruler on the photo");
        await goTo(page, "Keep");
        await page.getByRole("button", { name: "By ruler" }).click();
        assert.deepEqual(await violations(page), [], "the plain face by ruler");
        await page.getByRole("button", { name: "Show the map" }).click();
        await page.locator(".result svg").waitFor();
        assert.deepEqual(await violations(page), [], "map and result");
        await page.context().close();
      });
    }
  }

  it("letters on the picture stay legible when a phone is turned", async () => {
    const page = await open();
    await mapByRuler(page);
    await page.getByText("Guides and lengths on the picture").click();
    await page.locator(".drawing text").first().waitFor();
    const { width, height } = PHONE.viewport;
    for (const viewport of [
      { width, height },
      { width: height, height: width },
      { width: 320, height: 568 },
    ]) {
      await page.setViewportSize(viewport);
      // Sizes are written with a few decimals.
      await page.waitForFunction(() => {
        const letters = [...document.querySelectorAll<SVGTextElement>(".drawing text")];
        return letters.every((one) => {
          const onScreen = one.getScreenCTM()?.a ?? 0;
          return parseFloat(getComputedStyle(one).fontSize) * onScreen > 10.99;
        });
      });
    }
    await page.context().close();
  });

  it("whatever is tapped is at least 44 pixels high and wide", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Look at an example" }).click();
    for (const tab of ["Map", "Face", "Shape", "Check", "Keep"]) {
      await goTo(page, tab);
      const small = await page.locator("button, label, summary").evaluateAll((all) =>
        all
          .map((one) => ({ box: one.getBoundingClientRect(), text: one.textContent }))
          .filter(({ box }) => box.width > 0 && (box.width < 44 || box.height < 44))
          .map(({ text }) => text),
      );
      assert.deepEqual(small, [], tab);
    }
    await page.context().close();
  });
});
