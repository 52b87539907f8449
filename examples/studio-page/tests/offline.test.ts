import { describe, it } from "node:test";
import { mapPortrait, studio } from "./support/studio.js";

const { open, stopServer } = studio();

describe("without a network", () => {
  it("maps a photo once the page was loaded", async () => {
    const page = await open();
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.context().setOffline(true);
    await stopServer();
    await page.reload();
    await mapPortrait(page);
    await page.context().close();
  });
});
