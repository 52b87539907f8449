import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { after, before } from "node:test";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { preview, type PreviewServer } from "vite";
import { ENGLISH_PAGE } from "../../src/words/english.js";
import type { PageText } from "../../src/words/page-text.js";

export const SWITCHES = [
  "--no-sandbox",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-background-networking",
  "--no-first-run",
];

/** How long a busy machine may take for one step. */
const PATIENCE = 30_000;

export interface Studio {
  /** A page of its own, with no more than this origin to ask. */
  readonly open: (options?: BrowserContextOptions) => Promise<Page>;
  readonly stopServer: () => Promise<void>;
}

/** The built page in a browser, for the tests of one file. */
export function studio(): Studio {
  let server: PreviewServer | undefined;
  let browser: Browser | undefined;
  const strays: string[] = [];

  before(async () => {
    server = await preview({ preview: { port: 0, host: "127.0.0.1" }, logLevel: "error" });
    browser = await chromium.launch({
      executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
      args: SWITCHES,
    });
  });
  const stopServer = async () => {
    await server?.close();
    server = undefined;
  };
  after(async () => {
    await browser?.close();
    await stopServer();
    if (strays.length > 0) throw new Error(`The page asked elsewhere: ${strays.join(", ")}`);
  });

  const origin = () => {
    const address = server?.httpServer.address();
    if (address === null || address === undefined || typeof address === "string") {
      throw new Error("The server has no port.");
    }
    return `http://127.0.0.1:${address.port}`;
  };

  return {
    stopServer,
    open: async (options = PHONE) => {
      if (browser === undefined) throw new Error("The browser has not started.");
      const home = origin();
      const context = await browser.newContext({ ...options, baseURL: home });
      context.setDefaultTimeout(PATIENCE);
      context.on("request", (request) => {
        const address = new URL(request.url());
        const isOwn = address.origin === home || ["data:", "blob:"].includes(address.protocol);
        if (!isOwn) strays.push(address.href);
      });
      const page = await context.newPage();
      page.on("pageerror", (error) => {
        throw error;
      });
      await page.goto("/");
      return page;
    },
  };
}

export const PHONE = { viewport: { width: 375, height: 667 }, hasTouch: true } as const;
export const DESK = { viewport: { width: 1440, height: 900 } } as const;

/** One of the sample photos of @vladmandic/face-api: several people. */
export function group(): Promise<Buffer> {
  const path = createRequire(import.meta.url).resolve("@vladmandic/face-api/package.json");
  return readFile(path.replace("package.json", "demo/sample6.jpg"));
}

/** A face on it, cut out as a portrait. */
export async function portrait(page: Page): Promise<Buffer> {
  const photo = await group();
  const address = `data:image/jpeg;base64,${photo.toString("base64")}`;
  const cut = await page.evaluate(async (src) => {
    const image = new Image();
    image.src = src;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = canvas.height = 1200;
    canvas.getContext("2d")?.drawImage(image, 925, 118, 690, 690, 0, 0, 1200, 1200);
    return canvas.toDataURL("image/jpeg", 0.9);
  }, address);
  return Buffer.from(cut.split(",")[1] ?? "", "base64");
}

/** Opens a photo, takes the guessed borders for the hair's, and waits for the map. */
export async function mapPortrait(page: Page): Promise<void> {
  await openPortrait(page);
  await page.getByRole("button", { name: "The right brow fits the hair" }).click();
  await page.getByRole("button", { name: "The left brow fits the hair" }).click();
  await page.locator(".planned").first().waitFor();
}

export async function openPortrait(page: Page): Promise<void> {
  const buffer = await portrait(page);
  await page
    .getByLabel("Open a photo")
    .setInputFiles({ name: "client.jpg", mimeType: "image/jpeg", buffer });
  await page.getByRole("group", { name: "Borders of the right brow" }).waitFor();
}

/** The plain face as it is, by ruler alone, and its map. */
export async function mapByRuler(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Ruler only, on a plain face" }).click();
  await page.getByRole("button", { name: "Show the map" }).click();
}

/** The file that "Save record" saves. */
export async function saved(page: Page, { tabs, save }: PageText = ENGLISH_PAGE): Promise<Buffer> {
  await goTo(page, tabs.keep);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: save }).click(),
  ]);
  return readFile(await download.path());
}

export async function openRecord(page: Page, buffer: Buffer): Promise<void> {
  await page
    .getByLabel("Open a record")
    .setInputFiles({ name: "record.json", mimeType: "application/json", buffer });
}

/** One of the five places of the page. */
export async function goTo(page: Page, tab: string): Promise<void> {
  await page.getByRole("navigation").getByRole("button", { name: tab }).click();
}

/** Where a handle stands on its stage. */
export async function placeOf(page: Page, handle: string): Promise<readonly [number, number]> {
  const moved = await page.locator(`[data-handle="${handle}"]`).getAttribute("transform");
  const [x, y] = (moved ?? "").match(/-?[\d.]+/g)?.map(Number) ?? [];
  return [x ?? Number.NaN, y ?? Number.NaN];
}

/** Drags a handle with the pointer, by pixels of the screen. */
export async function drag(
  page: Page,
  handle: string,
  by: readonly [number, number],
): Promise<void> {
  const box = await page.locator(`[data-handle="${handle}"] .spot`).boundingBox();
  if (box === null) throw new Error(`There is no ${handle}.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by[0], y + by[1], { steps: 5 });
  await page.mouse.up();
}

/** One of a row of options. */
export async function choose(page: Page, name: string): Promise<void> {
  await page.getByRole("radio", { name, exact: true }).check();
}
