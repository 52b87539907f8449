import assert from "node:assert/strict";
import { describe, it } from "node:test";
import {
  choose,
  drag,
  goTo,
  group,
  mapPortrait,
  openPortrait,
  placeOf,
  studio,
} from "./support/studio.js";

const { open } = studio();

describe("a map from a photo", () => {
  it("plans nothing before both borders lie on the hair, then shows outlines and moves", async () => {
    const page = await open();
    await openPortrait(page);
    await goTo(page, "Map");
    assert.equal(await page.locator(".planned").count(), 0);
    await page.getByText("nothing is planned from a guess").waitFor();

    await goTo(page, "Face");
    const before = await placeOf(page, "upper 2");
    await drag(page, "upper 2", [6, 12]);
    const after = await placeOf(page, "upper 2");
    assert.ok(after[0] > before[0] && after[1] > before[1], "the point follows the finger");

    await page.getByRole("button", { name: "The right brow fits the hair" }).click();
    await page.getByRole("button", { name: "The left brow fits the hair" }).click();
    await page.locator(".planned").first().waitFor();
    assert.equal(await page.locator(".planned").count(), 2);
    const moves = await page.locator(".moves li").allTextContents();
    assert.ok(moves.length > 0 && moves.length <= 3);
    for (const move of moves) assert.match(move, /\d(\.5)? mm/);

    const agree = page.getByRole("button", { name: "Client agreed" });
    await agree.click();
    assert.equal(await agree.getAttribute("aria-pressed"), "true");
    await page.context().close();
  });

  it("asks which of several faces is the client's, and plans for a brow without hair", async () => {
    const page = await open();
    await page
      .getByLabel("Open a photo")
      .setInputFiles({ name: "several.jpg", mimeType: "image/jpeg", buffer: await group() });
    const faces = page.getByRole("group", { name: "Faces on the photo" });
    await faces.waitFor();
    const places = await faces
      .getByRole("button")
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().x));
    assert.equal(places.length, 4);
    // The third from the left looks into the camera.
    const wanted = places.indexOf([...places].sort((one, other) => one - other)[2] ?? 0);
    const face = faces.getByRole("button", { name: `face ${wanted + 1}` });
    await face.click();
    await page.getByRole("group", { name: "Borders of the right brow" }).waitFor();
    await choose(page, "Faces");
    assert.equal(await face.getAttribute("aria-pressed"), "true");
    await choose(page, "Right brow");
    await page.getByRole("checkbox", { name: "The right brow has no hair" }).check();
    await page.getByRole("button", { name: "Go on" }).click();
    await page.getByRole("button", { name: "The left brow fits the hair" }).click();
    await page.getByText("Why the dots are where they are").click();
    await page.getByText("the right brow has the other brow, mirrored").waitFor();
    await page.context().close();
  });

  it("says in one word what the photo is worth, and why a tap away", async () => {
    const page = await open();
    await mapPortrait(page);
    const verdict = page.locator(".verdict").first();
    assert.match(await verdict.locator("summary").first().innerText(), /Good|Careful|Retake/);
    await verdict.locator("summary").first().click();
    await verdict.getByText("The head is turned").waitFor();
    await page.context().close();
  });

  it("drags dots by pointer and by keys, and takes it all back", async () => {
    const page = await open();
    await mapPortrait(page);
    const dot = "left upperArch";
    const first = await placeOf(page, dot);
    await drag(page, dot, [0, -9]);
    const dragged = await placeOf(page, dot);
    assert.ok(dragged[1] < first[1], "the dot follows the finger upwards");
    assert.match(
      (await page.locator(`[data-handle="${dot}"]`).getAttribute("aria-label")) ?? "",
      /pinned/,
    );

    await page.locator(`[data-handle="${dot}"]`).focus();
    await page.keyboard.press("ArrowDown");
    const pressed = await placeOf(page, dot);
    assert.ok(pressed[1] > dragged[1], "an arrow key moves it back down");

    await page.getByRole("button", { name: "Undo" }).click();
    assert.deepEqual(await placeOf(page, dot), dragged);
    await page.getByRole("button", { name: "Undo" }).click();
    assert.deepEqual(await placeOf(page, dot), first);
    await page.getByRole("button", { name: "Redo" }).click();
    assert.deepEqual(await placeOf(page, dot), dragged);
    await page.context().close();
  });

  it("takes millimetres from two taps on a ruler in the photo", async () => {
    const page = await open();
    await openPortrait(page);
    await choose(page, "Ruler");
    const stage = page.getByRole("group", { name: "Photo with a ruler" });
    const box = await stage.boundingBox();
    assert.ok(box);
    const middle = box.y + box.height / 2;
    await page.mouse.click(box.x + box.width / 2 - 40, middle);
    await page.getByText("Now tap the second mark").waitFor();
    await page.mouse.click(box.x + box.width / 2 + 40, middle);
    await page.getByText("Between both marks").waitFor();
    const lengths = async (length: string) => {
      await goTo(page, "Face");
      await choose(page, "Ruler");
      await choose(page, length);
      await goTo(page, "Map");
      await page.getByText("Lengths, in millimetres").click();
      const text = await page
        .locator(".readings tbody tr")
        .nth(1)
        .locator("td")
        .first()
        .innerText();
      return Number(text.split(" ")[0]);
    };
    await choose(page, "Right brow");
    await page.getByRole("button", { name: "The right brow fits the hair" }).click();
    await page.getByRole("button", { name: "The left brow fits the hair" }).click();
    const [fifty, hundred] = [await lengths("50 mm"), await lengths("100 mm")];
    // The same photo, half the scale: what a ruler reads on skin doubles.
    assert.ok(Math.abs(hundred / fifty - 2) < 0.05, `${fifty} and ${hundred}`);
    await page.context().close();
  });
});
