import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
import { Problem, firstLine } from "./problem.js";
import { serveLocally } from "./server.js";

/**
 * @typedef {import("./page/reader.js").PhotoWindow} PhotoWindow
 * @typedef {import("./page/reader.js").FoundFace} FoundFace
 */

const switches = [
  "--no-sandbox",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** A photo is read in seconds; a page that says nothing for this long, on a busy machine too, will not. */
const patience = 180_000;

/**
 * @typedef {object} Detector
 * @property {(photo: Buffer) => Promise<ReadPhoto>} read
 * @property {(svg: string, width: number, height: number) => Promise<Buffer>} rasterise  An SVG as PNG of that size.
 * @property {() => Promise<void>} close
 *
 * @typedef {object} ReadPhoto
 * @property {number} width
 * @property {number} height
 * @property {readonly FoundFace[]} faces  From left to right.
 * @property {object} options  What the face mesh was told.
 * @property {(window: PhotoWindow, pixels: number) => Promise<string>} cutOut  A square of the photo as a data address.
 */

/**
 * Starts a browser that reads faces with the face mesh and asks nothing outside this machine.
 * @param {string} browserPath
 * @returns {Promise<Detector>}
 */
export async function openDetector(browserPath) {
  if (!existsSync(browserPath)) {
    throw new Problem(
      `no browser at ${browserPath}: install chromium, or name yours in the environment variable CHROMIUM_PATH`,
    );
  }
  const server = await serveLocally();
  try {
    const browser = await chromium
      .launch({ executablePath: browserPath, args: switches })
      .catch((error) => {
        throw new Problem(`${browserPath} does not start: ${firstLine(error)}`);
      });
    const context = await browser.newContext();
    await context.route(
      (address) => address.origin !== server.origin && address.protocol !== "data:",
      (route) => route.abort(),
    );
    context.setDefaultTimeout(patience);
    const reader = await context.newPage();
    const crashed = new Promise((_, reject) => {
      reader.once("pageerror", (error) =>
        reject(new Error(`the detector stopped: ${firstLine(error)}`)),
      );
      reader.once("crash", () => reject(new Error("the detector stopped: the page crashed")));
    });
    crashed.catch(() => {});
    await reader.goto(`${server.origin}/index.html`);
    await reader.waitForFunction("typeof readPhoto === 'function'");

    /**
     * @param {string} name @param {unknown[]} args
     * @returns {Promise<any>}
     */
    const ask = (name, ...args) =>
      withinPatience(
        Promise.race([crashed, reader.evaluate(`${name}(...${JSON.stringify(args)})`)]),
      );

    return {
      read: async (photo) => {
        const path = server.offer(photo);
        const found = await ask("readPhoto", path).catch((error) => {
          if (/decode/i.test(firstLine(error)))
            throw new Problem("not a picture this browser can read");
          throw error;
        });
        return { ...found, cutOut: (window, pixels) => ask("cutOut", path, window, pixels) };
      },
      rasterise: async (svg, width, height) => {
        const sheet = await context.newPage();
        try {
          await sheet.setViewportSize({ width, height });
          await sheet.setContent(
            `<!doctype html><style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`,
          );
          return await sheet.screenshot({ type: "png" });
        } finally {
          await sheet.close();
        }
      },
      close: async () => {
        await browser.close();
        server.close();
      },
    };
  } catch (error) {
    server.close();
    throw error;
  }
}

/**
 * @template Answer
 * @param {Promise<Answer>} answer
 * @returns {Promise<Answer>}
 */
async function withinPatience(answer) {
  /** @type {NodeJS.Timeout | undefined} */
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(
      () => reject(new Error(`the detector gave no answer in ${patience / 1000} seconds`)),
      patience,
    );
  });
  try {
    return /** @type {Answer} */ (await Promise.race([answer, late]));
  } finally {
    clearTimeout(timer);
  }
}
