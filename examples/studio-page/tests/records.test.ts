import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { describe, it } from "node:test";
import type { Page } from "playwright-core";
import { drag, goTo, mapPortrait, placeOf, studio } from "./support/studio.js";

const { open } = studio();

async function saved(page: Page): Promise<Buffer> {
  await goTo(page, "Keep");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save record" }).click(),
  ]);
  return readFile(await download.path());
}

async function openFile(page: Page, buffer: Buffer): Promise<void> {
  await page
    .getByLabel("Open a record")
    .setInputFiles({ name: "record.json", mimeType: "application/json", buffer });
}

describe("records", () => {
  it("open again on a fresh page with the photo, the dots and what was agreed", async () => {
    const page = await open();
    await mapPortrait(page);
    await drag(page, "left upperArch", [0, -6]);
    await page.getByRole("button", { name: "Client agreed" }).click();
    const before = await placeOf(page, "right upperArch");
    const file = await saved(page);

    await page.reload();
    await openFile(page, file);
    await page.locator(".photo image").waitFor();
    assert.equal(
      await page.getByRole("button", { name: "Client agreed" }).getAttribute("aria-pressed"),
      "true",
    );
    const after = await placeOf(page, "right upperArch");
    assert.ok(Math.hypot(after[0] - before[0], after[1] - before[1]) < 0.01);
    await page.context().close();
  });

  it("refuse what is no record, and say so", async () => {
    const page = await open();
    const hostile = [
      "not JSON at all",
      "{}",
      "[".repeat(50_000),
      '{"version":999}',
      '{"__proto__":{"polluted":true},"version":2}',
      JSON.stringify({ version: 2, input: { kind: "face", face: "<img src=x onerror=alert(1)>" } }),
    ];
    for (const text of hostile) {
      await openFile(page, Buffer.from(text));
      await page.getByText("This file is no record that can be opened").waitFor();
      await page.getByRole("button", { name: "Close this message" }).click();
    }
    await page.getByRole("heading", { name: "Brow map" }).waitFor();
    await page.context().close();
  });

  it("lose what only this page reads where it has another form", async () => {
    const page = await open();
    await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
    await page.getByRole("button", { name: "Show the map" }).click();
    const record = JSON.parse((await saved(page)).toString()) as object;
    const href = "https://elsewhere.example/pixel.jpg";
    const app = { page: 1, ticked: ["<b>", 0], picture: { width: 10, height: 10, href } };
    await page.reload();
    await openFile(page, Buffer.from(JSON.stringify({ ...record, app })));
    await page.locator(".planned").first().waitFor();
    assert.equal(await page.locator(".photo").count(), 0);
    await page.context().close();
  });
});
