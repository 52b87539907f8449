import assert from "node:assert/strict";
import { describe, it } from "node:test";
import { choose, drag, goTo, mapByRuler, placeOf, studio } from "./support/studio.js";

const { open } = studio();

describe("a map from readings alone", () => {
  it("goes from a plain face to moves and ruler checks without a letter typed", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
    const more = page.getByRole("button", { name: "Height of the arch: more" });
    for (let step = 0; step < 4; step += 1) await more.click();
    await drag(page, "left start", [0, -6]);
    const [, height] = await placeOf(page, "left start");
    assert.ok(Number.isInteger(2 * height), "a ruler shows half millimetres");

    await page.getByRole("button", { name: "Show the map" }).click();
    await page.locator(".planned").first().waitFor();
    const moves = await page.locator(".moves li").allTextContents();
    assert.ok(
      moves.some((move) => /right arch: down 1 mm/.test(move)),
      moves.join("; "),
    );

    await goTo(page, "Check");
    const steps = page.getByRole("checkbox");
    assert.ok((await steps.count()) >= 2);
    await steps.first().check();
    await page.getByText(/^1 of \d+ checked/).waitFor();
    await page.context().close();
  });

  it("plans by the choices and wishes that are tapped", async () => {
    const page = await open();
    await mapByRuler(page);
    await goTo(page, "Shape");
    const before = await placeOf(page, "left tailEnd");
    await page.getByRole("button", { name: "Height: more" }).click();
    await page.getByRole("button", { name: "Height: more" }).click();
    await page.getByText("Lift by 1.0 mm: granted.").waitFor();
    const after = await placeOf(page, "left tailEnd");
    assert.ok(
      Math.abs(before[1] - after[1] - 1) < 0.01,
      "lifted by the millimetre that was granted",
    );

    const thickness = page.getByRole("button", { name: "At the start: more" });
    await choose(page, "My own");
    await thickness.click();
    await choose(page, "As it grows");
    assert.equal(await thickness.count(), 0, "its own thickness was let go of");
    assert.ok(await page.getByRole("radio", { name: "As it grows" }).isChecked());
    await page.context().close();
  });

  it("keeps nothing of a drag that the browser breaks off", async () => {
    const page = await open();
    await mapByRuler(page);
    const dot = "left upperArch";
    const before = await placeOf(page, dot);
    const box = await page.locator(`[data-handle="${dot}"] .spot`).boundingBox();
    assert.ok(box);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2, box.y - 9);
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(null))));
    assert.notDeepEqual(await placeOf(page, dot), before);
    await page.locator("svg.live").dispatchEvent("pointercancel");
    assert.deepEqual(await placeOf(page, dot), before);
    await page.mouse.up();
    await page.context().close();
  });
});
