import assert from "node:assert/strict";
import { describe, it } from "node:test";
import {
  choose,
  drag,
  goTo,
  mapByRuler,
  openRecord,
  placeOf,
  saved,
  studio,
} from "./support/studio.js";

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

    // Other choices are seen beside each other, and taken by a tap.
    await page.getByText("Other choices").click();
    const cards = page.getByRole("button", { name: /^Take: / });
    await cards.nth(1).waitFor();
    assert.ok((await cards.count()) <= 4);
    const taken = ((await cards.first().getAttribute("aria-label")) ?? "").replace("Take: ", "");
    const outline = page.locator(".stage .planned").first();
    const planned = await outline.getAttribute("d");
    await cards.first().click();
    assert.notEqual(await outline.getAttribute("d"), planned);
    assert.equal(
      await page.getByRole("button", { name: `Take: ${taken}`, exact: true }).count(),
      0,
    );
    await page.getByRole("button", { name: "Undo" }).click();
    assert.equal(await outline.getAttribute("d"), planned);

    const thickness = page.getByRole("button", { name: "At the start: more" });
    await choose(page, "My own");
    await thickness.click();
    await choose(page, "As it grows");
    assert.equal(await thickness.count(), 0, "its own thickness was let go of");
    assert.ok(await page.getByRole("radio", { name: "As it grows" }).isChecked());
    await page.context().close();
  });

  it("takes the other brow's shape for one without hair, and averages for two", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
    await page.getByRole("checkbox", { name: "The right brow has no hair" }).check();
    assert.equal(await page.locator('[data-handle^="right"]').count(), 0);
    assert.equal(await page.getByRole("button", { name: "Height of the arch: more" }).count(), 0);
    await page.getByRole("button", { name: "Show the map" }).click();
    await page.getByText("Why the dots are where they are").click();
    await page.getByText("the right brow has the other brow, mirrored").waitFor();
    await goTo(page, "Face");
    await choose(page, "Left brow");
    await page.getByRole("checkbox", { name: "The left brow has no hair" }).check();
    await goTo(page, "Map");
    await page.getByText("Why the dots are where they are").click();
    await page
      .getByText(/average/)
      .first()
      .waitFor();
    await page.context().close();
  });

  it("keeps nothing of a drag that the browser breaks off; draws around a scar and says what it meets", async () => {
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

    await goTo(page, "Shape");
    await page.getByRole("button", { name: "Stay off" }).click();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x - 15, y - 15);
    await page.mouse.down();
    for (const [across, down] of [
      [15, -15],
      [15, 15],
      [-15, 15],
      [-15, -10],
    ] as const) {
      await page.mouse.move(x + across, y + down, { steps: 4 });
    }
    await page.mouse.up();
    await page.getByText(/^scar: the planned brows overlap/).waitFor();
    assert.deepEqual(await placeOf(page, dot), before, "what is drawn moves no dot");
    const file = await saved(page);
    await page.reload();
    await openRecord(page, file);
    assert.equal(await page.locator(".stage .area").count(), 1);
    await goTo(page, "Shape");
    await page.getByRole("button", { name: "Take away: scar" }).click();
    assert.equal(await page.locator(".stage .area").count(), 0);
    await page.context().close();
  });
});
