import assert from "node:assert/strict";
import { describe, it } from "node:test";
import { goTo, studio } from "./support/studio.js";

const { open } = studio();

describe("the sheet", () => {
  it("prints at true size, and nothing of the page with it", async () => {
    const page = await open();
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute("data-printed", "");
    });
    await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
    await page.getByRole("button", { name: "Show the map" }).click();
    await goTo(page, "Keep");
    await page.getByRole("button", { name: "Print the sheet" }).click();
    await page.locator("[data-printed]").waitFor();

    await page.emulateMedia({ media: "print" });
    assert.equal(await page.locator(".screen").isVisible(), false);
    const papers = page.locator(".paper svg");
    const count = await papers.count();
    assert.ok(count > 0);
    // CSS: 96 px an inch.
    const box = await papers.first().boundingBox();
    assert.ok(box && Math.abs((box.width / 96) * 25.4 - 210) < 0.1, "as wide as A4");

    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    const sizes = [...pdf.matchAll(/\/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]/g)];
    assert.equal(sizes.length, count, "one page of paper for each page of the sheet");
    for (const [, width, height] of sizes) {
      // PDF: 72 points an inch, in whole ones here.
      assert.ok(Math.abs((Number(width) / 72) * 25.4 - 210) < 0.4, `${width} points wide`);
      assert.ok(Math.abs((Number(height) / 72) * 25.4 - 297) < 0.4, `${height} points high`);
    }
    await page.context().close();
  });
});
