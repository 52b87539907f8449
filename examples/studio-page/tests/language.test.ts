import assert from "node:assert/strict";
import { describe, it } from "node:test";
import type { MapRecord } from "brow-geometry";
import { ENGLISH_PAGE } from "../src/words/english.js";
import { SPANISH_PAGE } from "../src/words/spanish.js";
import { choose, goTo, saved, studio } from "./support/studio.js";

const { open } = studio();

/** Whom the library and the page name, in English. */
const FOLK = /the artist|the client/i;

/** All sentences of the page in English. */
function textsIn(part: unknown): readonly string[] {
  if (typeof part === "string") return [part];
  return typeof part === "object" && part !== null ? Object.values(part).flatMap(textsIn) : [];
}

describe("in Spanish", () => {
  it("nothing is left in English, and the language stays chosen", async () => {
    const page = await open();
    await choose(page, "Español");
    await page.getByRole("button", { name: SPANISH_PAGE.plainFace }).click();
    const more = page.getByRole("button", { name: /^Altura del arco: más/ });
    for (let step = 0; step < 4; step += 1) await more.click();
    await page.getByRole("button", { name: SPANISH_PAGE.showMap }).click();
    await page.locator(".moves li", { hasText: "derecha" }).first().waitFor();
    await page.locator('[data-handle="left upperArch"]').focus();
    await page.keyboard.press("ArrowUp");
    await goTo(page, SPANISH_PAGE.tabs.shape);
    const { spacing } = SPANISH_PAGE.wishNames;
    await page.getByRole("button", { name: SPANISH_PAGE.more(spacing) }).click();
    await page.getByText(/: concedido\.$/).waitFor();
    await goTo(page, SPANISH_PAGE.tabs.map);
    await page.getByRole("button", { name: SPANISH_PAGE.agree }).click();
    const record = (await saved(page, SPANISH_PAGE)).toString();
    const { choices, agreement } = JSON.parse(record) as MapRecord;
    const { theClient } = SPANISH_PAGE;
    // The artist's pin says nothing: the library has its own words for that.
    assert.deepEqual(
      choices.pins?.map(({ by }) => by),
      [undefined, theClient, theClient],
    );
    assert.deepEqual(
      agreement?.map(({ by }) => by),
      [theClient],
    );
    assert.doesNotMatch(record, FOLK);
    const both = new Set(textsIn(SPANISH_PAGE));
    const english = textsIn(ENGLISH_PAGE).filter((one) => one.length > 7 && !both.has(one));
    for (const tab of Object.values(SPANISH_PAGE.tabs)) {
      await goTo(page, tab);
      for (const one of await page.locator("summary").all()) await one.click();
      const seen = await page.locator("body").innerText();
      assert.doesNotMatch(seen, FOLK);
      assert.deepEqual(
        english.filter((one) => seen.includes(one)),
        [],
        tab,
      );
    }
    assert.equal(await page.locator("html").getAttribute("lang"), "es");
    await page.reload();
    await page.getByRole("heading", { name: SPANISH_PAGE.title }).waitFor();
    await choose(page, "English");
    await page.getByRole("heading", { name: ENGLISH_PAGE.title }).waitFor();
    await page.context().close();
  });
});
