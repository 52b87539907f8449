// Writes the pictures of the page for the documents: npm run pictures. Names of views after it: those alone.
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { preview } from "vite";
import { DESK, goTo, openRecord, PHONE, placeOf, saved, SWITCHES } from "./studio.js";

const FOLDER = join(import.meta.dirname, "../../../../docs/page");

/** What each picture shows, by its name; it begins with the example's map. */
const VIEWS = {
  map: () => Promise.resolve(),
  lines: async (page) => {
    await page.getByText("Guides and lengths on the picture").click();
    await page.locator(".drawing svg").waitFor();
  },
  hair: (page) => goTo(page, "Face"),
  shape: async (page) => {
    await goTo(page, "Shape");
    await page.getByRole("button", { name: "Height: more" }).click();
  },
  choices: async (page) => {
    await goTo(page, "Shape");
    await page.getByText("Other choices").click();
    await page.locator(".cards").scrollIntoViewIfNeeded();
  },
  areas: async (page) => {
    await goTo(page, "Shape");
    await drawArea(page, "Cover", "right lowerBody", [34, 20]);
    await drawArea(page, "Stay off", "left tailEnd", [12, 26]);
    await page.locator(".areas li").last().scrollIntoViewIfNeeded();
  },
  check: async (page) => {
    await goTo(page, "Check");
    await page.getByRole("checkbox").first().check();
  },
  keep: (page) => goTo(page, "Keep"),
  ruler: async (page) => {
    await startWithRuler(page);
    await page.getByRole("button", { name: "Height of the arch: more" }).click();
  },
  "ruler-map": (page) => mapByRuler(page),
  healed: async (page) => {
    await mapByRuler(page);
    await addHealed(page, "6 weeks", 5);
  },
  fresh: async (page) => {
    await mapByRuler(page);
    await addHealed(page, "Fresh", 1);
  },
  sheet: async (page) => {
    // Nobody prints here: the sheet is shown as the paper has it.
    await page.addInitScript(() => {
      window.print = () => window.parent.document.body.setAttribute("data-printed", "");
    });
    await page.reload();
    await page.getByRole("button", { name: "Close this message" }).click();
    await mapByRuler(page);
    await goTo(page, "Keep");
    await page.getByRole("button", { name: "Print sheet" }).click();
    await page.locator("[data-printed]").waitFor();
    const sheet = await page.locator("iframe.sheet").getAttribute("srcdoc");
    await page.goto("about:blank");
    await page.setViewportSize({ width: 794, height: 1123 });
    await page.emulateMedia({ media: "print" });
    await page.setContent(sheet ?? "");
    // A screen has no margins of paper.
    await page.addStyleTag({ content: "html { padding: 9mm 12mm }" });
  },
  record: async (page) => {
    await page.getByRole("button", { name: "Client agreed" }).click();
    const record = await saved(page);
    await page.reload();
    await page.getByRole("button", { name: "Close this message" }).click();
    await goTo(page, "Keep");
    await openRecord(page, record);
    await page.getByRole("button", { name: "✓ Client agreed" }).waitFor();
  },
} satisfies Readonly<Record<string, (page: Page) => Promise<void>>>;

type View = keyof typeof VIEWS;

/** Draws a ring around a dot, so many pixels wide and high. */
async function drawArea(
  page: Page,
  aim: string,
  dot: string,
  [width, height]: readonly [number, number],
): Promise<void> {
  await page.getByRole("button", { name: aim, exact: true }).click();
  const box = await page.locator(`[data-handle="${dot}"] .spot`).boundingBox();
  if (box === null) throw new Error(`There is no ${dot}.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  for (let corner = 0; corner <= 24; corner += 1) {
    const turn = (2 * Math.PI * corner) / 24;
    await page.mouse.move(x + (width / 2) * Math.cos(turn), y + (height / 2) * Math.sin(turn));
    if (corner === 0) await page.mouse.down();
  }
  await page.mouse.up();
}

async function startWithRuler(page: Page): Promise<void> {
  await goTo(page, "Keep");
  await page.getByRole("button", { name: "Next client" }).click();
  await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
}

/** An invented client by ruler, her left brow higher. */
async function mapByRuler(page: Page): Promise<void> {
  await startWithRuler(page);
  for (const [name, times] of [
    ["Height of the arch: more", 3],
    ["Height of the tail end: less", 2],
  ] as const) {
    for (let time = 0; time < times; time += 1) {
      await page.getByRole("button", { name, exact: true }).click();
    }
  }
  await page.getByRole("button", { name: "Show the map" }).click();
  await placeOf(page, "left upperArch");
}

async function addHealed(page: Page, since: string, halves: number): Promise<void> {
  await goTo(page, "Keep");
  await page.getByRole("radio", { name: since }).check();
  await page.getByRole("button", { name: "By ruler" }).click();
  const less = page.getByRole("button", { name: "Tail end from the midline: less" });
  for (let half = 0; half < halves; half += 1) await less.click();
  await page.getByRole("button", { name: "Show the map" }).click();
  await page.locator(".result svg").waitFor();
}

const SIZES = { phone: PHONE, desk: DESK };
const ALL = (Object.keys(VIEWS) as View[]).filter((view) => view !== "sheet");
const SHOWN: Readonly<
  Record<keyof typeof SIZES, Readonly<Record<"light" | "dark", readonly View[]>>>
> = {
  phone: { light: ALL, dark: ["map", "hair", "healed"] },
  desk: {
    light: ["map", "lines", "hair", "shape", "check", "keep", "healed", "sheet"],
    dark: ["map", "ruler-map"],
  },
};

const wanted = process.argv.slice(2);
await mkdir(FOLDER, { recursive: true });
const server = await preview({ preview: { port: 0, host: "127.0.0.1" }, logLevel: "error" });
const address = server.resolvedUrls?.local[0] ?? "";
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
  args: SWITCHES,
});
for (const size of ["phone", "desk"] as const) {
  for (const colorScheme of ["light", "dark"] as const) {
    for (const view of SHOWN[size][colorScheme]) {
      if (wanted.length > 0 && !wanted.includes(view)) continue;
      const page = await browser.newPage({ ...SIZES[size], colorScheme });
      await page.goto(`${address}#example`);
      await page.getByRole("button", { name: "Close this message" }).click();
      await VIEWS[view](page);
      const path = join(FOLDER, `${view}-${size}-${colorScheme}.jpg`);
      await page.screenshot({ path, type: "jpeg", quality: 72 });
      await page.close();
    }
  }
}
await browser.close();
await server.close();
