import assert from "node:assert/strict";
import { describe, it } from "node:test";
import { type MapRecord, recordOf } from "brow-geometry";
import {
  drag,
  goTo,
  mapByRuler,
  mapPortrait,
  openRecord,
  placeOf,
  saved,
  studio,
} from "./support/studio.js";

const { open } = studio();

describe("records", () => {
  it("open again on a fresh page with the photo, the dots and what was agreed", async () => {
    const page = await open();
    await mapPortrait(page);
    await drag(page, "left upperArch", [0, -6]);
    await page.getByRole("button", { name: "Client agreed" }).click();
    const before = await placeOf(page, "right upperArch");
    const file = await saved(page);

    await page.reload();
    await openRecord(page, file);
    await page.locator(".photo image").waitFor();
    assert.equal(
      await page.getByRole("button", { name: "Client agreed" }).getAttribute("aria-pressed"),
      "true",
    );
    await page.getByText(/^on .*\d{4}$/).waitFor();
    const after = await placeOf(page, "right upperArch");
    assert.ok(Math.hypot(after[0] - before[0], after[1] - before[1]) < 0.01);
    await page.context().close();
  });

  it("are saved as they were opened, but for what was tapped since", async () => {
    const page = await open();
    await mapByRuler(page);
    const { input } = JSON.parse((await saved(page)).toString()) as MapRecord;
    // Invented, as another program could have kept it.
    const extras = {
      artist: "the artist of that day",
      place: "the place of that day",
      notes: [{ text: "sits askew" }],
      agreement: [
        { kind: "shown", text: "on a screen" },
        { kind: "agreed", text: "As drawn, a little thinner.", by: "the client" },
      ],
      findings: [{ code: "own", values: {}, severity: "retake", text: "The lens was dirty." }],
      app: { elsewhere: { kept: true } },
    } as const;
    const first = recordOf(input, {}, { date: "2019-11-02" });
    const record = recordOf(
      input,
      { lead: "left" },
      { ...extras, date: "2020-03-14", earlier: [first] },
    );
    const { app: _, ...written } = JSON.parse(JSON.stringify(record)) as MapRecord;
    const again = async () => {
      const { app, ...others } = JSON.parse((await saved(page)).toString()) as MapRecord;
      return { app: app as object, others };
    };

    await page.reload();
    await openRecord(page, Buffer.from(JSON.stringify(record)));
    await page.getByText("Photo: Retake").waitFor();
    const { app, others } = await again();
    assert.deepEqual(others, written);
    assert.deepEqual({ ...app, ...extras.app }, app, "what another program keeps stays");

    await goTo(page, "Map");
    const agree = page.getByRole("button", { name: "Client agreed" });
    await agree.click();
    assert.deepEqual((await again()).others.agreement, extras.agreement.slice(0, 1));

    await goTo(page, "Shape");
    await page.getByRole("radio", { name: "Right", exact: true }).check();
    const changed = (await again()).others;
    assert.equal(changed.choices.lead, "right");
    assert.notEqual(changed.date, record.date, "another map, made on another day");
    assert.equal(changed.artist, record.artist);
    assert.deepEqual(changed.earlier, written.earlier);

    // While a visit is entered, what the map says is about the map.
    await goTo(page, "Keep");
    await page.getByRole("button", { name: "By ruler" }).click();
    await goTo(page, "Map");
    await page.getByText("Photo: Retake").click();
    await page.getByRole("button", { name: "Go on by ruler alone" }).click();
    await page.getByRole("heading", { name: "Brow map" }).waitFor();
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
      await openRecord(page, Buffer.from(text));
      await page.getByText("This file is no record that can be opened").waitFor();
      await page.getByRole("button", { name: "Close this message" }).click();
    }
    await page.getByRole("heading", { name: "Brow map" }).waitFor();
    await page.context().close();
  });

  it("lose what only this page reads where it has another form", async () => {
    const page = await open();
    await mapByRuler(page);
    const record = JSON.parse((await saved(page)).toString()) as object;
    const href = "https://elsewhere.example/pixel.jpg";
    const picture = { width: 10, height: 10, href };
    const app = { page: 1, ticked: ["<b>", 0], picture, agreedOn: "2026-99-99" };
    const agreement = [{ kind: "agreed", text: "As drawn." }];
    // Records may hold a 29 February of any year.
    const hostile = { ...record, app, agreement, date: "2025-02-29" };
    await page.reload();
    await openRecord(page, Buffer.from(JSON.stringify(hostile)));
    await page.locator(".planned").first().waitFor();
    assert.equal(await page.locator(".photo").count(), 0);
    await page.getByText("on 2025-02-29").waitFor();
    await page.context().close();
  });
});
