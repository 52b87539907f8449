// Writes the pictures of the page for the documents: npm run pictures.
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { preview } from "vite";
import { DESK, goTo, PHONE } from "./studio.js";

const FOLDER = join(import.meta.dirname, "../../../../docs/page");

/** What each picture shows, by its name. */
const VIEWS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  map: () => Promise.resolve(),
  hair: (page) => goTo(page, "Face"),
  shape: async (page) => {
    await goTo(page, "Shape");
    await page.getByRole("button", { name: "Height: more" }).click();
  },
  check: async (page) => {
    await goTo(page, "Check");
    await page.getByRole("checkbox").first().check();
  },
  keep: (page) => goTo(page, "Keep"),
};

const SIZES = { phone: PHONE, desk: DESK };
const SHOWN = {
  phone: { light: Object.keys(VIEWS), dark: ["map", "hair"] },
  desk: { light: ["map"], dark: ["map"] },
};

await mkdir(FOLDER, { recursive: true });
const server = await preview({ preview: { port: 0, host: "127.0.0.1" }, logLevel: "error" });
const address = server.resolvedUrls?.local[0] ?? "";
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
for (const size of ["phone", "desk"] as const) {
  for (const colorScheme of ["light", "dark"] as const) {
    for (const view of SHOWN[size][colorScheme]) {
      const page = await browser.newPage({ ...SIZES[size], colorScheme });
      await page.goto(`${address}#example`);
      await page.getByRole("button", { name: "Close this message" }).click();
      await VIEWS[view]?.(page);
      const path = join(FOLDER, `${view}-${size}-${colorScheme}.jpg`);
      await page.screenshot({ path, type: "jpeg", quality: 72 });
      await page.close();
    }
  }
}
await browser.close();
await server.close();
