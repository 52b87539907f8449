import assert from "node:assert/strict";
import { describe, it } from "node:test";
import { goTo, mapByRuler, mapPortrait, portrait, saved, studio } from "./support/studio.js";

const { open } = studio();

describe("what came of a map", () => {
  it("is compared with the plan, healed, by ruler", async () => {
    const page = await open();
    await mapByRuler(page);
    await goTo(page, "Keep");
    await page.getByRole("button", { name: "By ruler" }).click();
    await page.getByRole("heading", { name: "Result after 6 weeks" }).waitFor();
    // The tail has faded by four millimetres.
    const less = page.getByRole("button", { name: "Tail end from the midline: less" });
    for (let step = 0; step < 8; step += 1) await less.click();
    await page.getByRole("button", { name: "Show the map" }).click();

    await page.locator(".result svg").waitFor();
    await page.getByText("After 6 weeks", { exact: true }).waitFor();
    const { app, date } = JSON.parse((await saved(page)).toString()) as {
      app: { visits: { record: { date: string } }[] };
      date: string;
    };
    assert.deepEqual(
      app.visits.map((visit) => visit.record.date),
      [date],
      "a visit has its day",
    );
    await page.getByText(/^right, from arch to tail end: fill the end/).waitFor();
    await page
      .locator(".notes")
      .getByText(/for licensed practice to judge/)
      .first()
      .waitFor();
    await page.context().close();
  });

  it("is compared with the plan, fresh, from a photo", async () => {
    const page = await open();
    await mapPortrait(page);
    await goTo(page, "Keep");
    await page.getByRole("radio", { name: "Fresh" }).check();
    const buffer = await portrait(page);
    await page
      .getByLabel("From a photo")
      .setInputFiles({ name: "fresh.jpg", mimeType: "image/jpeg", buffer });
    await page.getByRole("heading", { name: "Result, fresh" }).waitFor();
    const visitsKept = async () => {
      const { app } = JSON.parse((await saved(page)).toString()) as { app: { visits: unknown[] } };
      return app.visits.length;
    };
    assert.equal(await visitsKept(), 0, "a guess at borders is no pigment");
    await page.getByText("A visit is not in the record").waitFor();
    await goTo(page, "Face");
    await page.getByRole("button", { name: "The right brow fits the hair" }).click();
    await page.getByRole("button", { name: "The left brow fits the hair" }).click();
    await page.locator(".result svg").waitFor();
    assert.equal(await page.getByText("Nothing to touch up.").count(), 0, "too early to say");
    assert.equal(await visitsKept(), 1);
    await page.context().close();
  });
});
