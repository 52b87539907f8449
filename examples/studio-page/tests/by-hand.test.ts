import assert from "node:assert/strict";
import { describe, it } from "node:test";
import type { Page } from "playwright-core";
import { choose, drag, goTo, placeOf, studio } from "./support/studio.js";

const { open } = studio();

/** A picture in which nobody finds a face. */
async function blank(page: Page) {
  const address = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = canvas.height = 800;
    return canvas.toDataURL("image/png");
  });
  const buffer = Buffer.from(address.split(",")[1] ?? "", "base64");
  return { name: "client.png", mimeType: "image/png", buffer };
}

describe("a photo in which no face is found", () => {
  it("is mapped by hand: eyes, ruler, brows", async () => {
    const page = await open();
    const photo = await blank(page);
    await page.getByLabel("Open a photo").setInputFiles(photo);
    await page.getByText("No face was found.").waitFor();
    // A first mark goes with its photo.
    await choose(page, "Ruler");
    await page.getByRole("group", { name: "Photo with a ruler" }).click();
    await page.getByText("Now tap the second mark").waitFor();
    await page.getByLabel("Another photo").setInputFiles(photo);
    await page.getByRole("group", { name: "Eye corners and nose wings" }).waitFor();
    await choose(page, "Ruler");
    await page.getByText("Tap two marks of a ruler").waitFor();
    await choose(page, "Eyes");

    const corner = "right exocanthion";
    const before = await placeOf(page, corner);
    await drag(page, corner, [-4, 0]);
    assert.ok((await placeOf(page, corner))[0] < before[0]);

    await choose(page, "Right brow");
    await page.getByRole("button", { name: "The right brow fits the hair" }).click();
    await page.getByRole("button", { name: "The left brow fits the hair" }).click();
    await page.getByText("Millimetres are missing.").waitFor();
    await page.getByRole("button", { name: "Go to the ruler" }).click();
    const box = await page.getByRole("group", { name: "Photo with a ruler" }).boundingBox();
    assert.ok(box);
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 4];
    await page.mouse.click(x - 55, y);
    await page.mouse.click(x + 55, y);
    await page.getByText("Between both marks").waitFor();
    await choose(page, "100 mm");
    await goTo(page, "Map");
    await page.locator(".planned").first().waitFor();
    await page.context().close();
  });

  it("can be left for the ruler alone; that of a visit begins with the eyes, too", async () => {
    const page = await open();
    const photo = await blank(page);
    await page.getByLabel("Open a photo").setInputFiles(photo);
    await page.getByText("No face was found.").waitFor();
    await page.getByRole("button", { name: "Ruler only" }).click();
    await page.getByRole("button", { name: "Show the map" }).click();
    await page.locator(".planned").first().waitFor();

    await goTo(page, "Keep");
    await page.getByLabel("From a photo").setInputFiles(photo);
    await page.getByRole("group", { name: "Eye corners and nose wings" }).waitFor();
    await page.context().close();
  });
});
