// Says what a frame of a drag costs on a slow phone: npm run bench, where nothing else runs.
import { loadavg } from "node:os";
import { chromium, type Page } from "playwright-core";
import { preview } from "vite";
import { costOfDragging } from "./drag-cost.js";
import { DESK, mapByRuler, mapPortrait, PHONE, SWITCHES } from "./studio.js";

const MAPS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  "from a photo": mapPortrait,
  "by ruler": mapByRuler,
};
const SIZES = { phone: PHONE, desk: DESK };
const SLOWER = 4;

const server = await preview({ preview: { port: 0, host: "127.0.0.1" }, logLevel: "error" });
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
  args: SWITCHES,
});
for (const [size, options] of Object.entries(SIZES)) {
  for (const [name, makeMap] of Object.entries(MAPS)) {
    const page = await browser.newPage({ ...options, hasTouch: true });
    await page.goto(server.resolvedUrls?.local[0] ?? "");
    await makeMap(page);
    const { processor } = await costOfDragging(page, "left upperArch", 1);
    const { clock } = await costOfDragging(page, "left upperArch", SLOWER);
    const load = loadavg()[0]?.toFixed(1) ?? "?";
    console.log(
      `${size}, ${name}: ${processor.toFixed(1)} ms of the processor a frame; ${SLOWER} times slower ${clock.toFixed(1)} ms by the clock (load ${load})`,
    );
    await page.close();
  }
}
await browser.close();
await server.close();
