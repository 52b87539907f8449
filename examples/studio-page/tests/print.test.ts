import assert from "node:assert/strict";
import { describe, it } from "node:test";
import { recordOf } from "brow-geometry";
import { faceOf, PLAIN_FACE } from "../src/appointment/readings.js";
import { goTo, openRecord, studio } from "./support/studio.js";

const { open } = studio();

describe("the sheet", () => {
  it("prints at true size, and nothing of the page with it, where the paper is wide enough", async () => {
    const page = await open();
    // In every frame: what would print says so instead.
    await page.addInitScript(() => {
      window.print = () => window.parent.document.body.setAttribute("data-printed", "");
    });
    await page.reload();
    await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
    await page.getByRole("button", { name: "Show the map" }).click();
    await goTo(page, "Keep");
    await page.getByRole("button", { name: "Print sheet" }).click();
    await page.locator("[data-printed]").waitFor();

    const printed = await page.context().newPage();
    await printed.setContent((await page.locator("iframe.sheet").getAttribute("srcdoc")) ?? "");
    await printed.emulateMedia({ media: "print" });
    const box = await printed.locator("svg.map").boundingBox();
    const { width = 0 } = box ?? {};
    // CSS: 96 px an inch. A4 has 186 mm between margins of 12 mm.
    assert.ok(Math.abs((width / 96) * 25.4 - 186) < 0.1, `a picture ${width} px wide`);

    const pdf = (await printed.pdf({ preferCSSPageSize: true })).toString("latin1");
    const sizes = [...pdf.matchAll(/\/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]/g)];
    assert.equal(sizes.length, 2, "two pages");
    for (const [, across, high] of sizes) {
      // PDF: 72 points an inch, in whole ones here.
      assert.ok(Math.abs((Number(across) / 72) * 25.4 - 210) < 0.4, `${across} points wide`);
      assert.ok(Math.abs((Number(high) / 72) * 25.4 - 297) < 0.4, `${high} points high`);
    }
    await printed.close();

    // A face that is wider than the paper has no sheet, and the page says why.
    const [face, side] = [PLAIN_FACE.face, { ...PLAIN_FACE.right, tailDistance: 80 }];
    const input = { kind: "face", face: faceOf({ face, right: side, left: side }) } as const;
    await openRecord(page, Buffer.from(JSON.stringify(recordOf(input))));
    await goTo(page, "Keep");
    await page.getByRole("button", { name: "Print sheet" }).click();
    await page.getByText("The sheet cannot be drawn: width of the face").waitFor();
    await page.context().close();
  });
});
