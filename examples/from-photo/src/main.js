import console from "node:console";
import { createHash } from "node:crypto";
import { mkdir, writeFile } from "node:fs/promises";
import { basename, join, relative, resolve } from "node:path";
import process from "node:process";
import { parseArgs } from "node:util";
import { contactSheet, picture } from "./contact-sheet.js";
import { openDetector } from "./detector.js";
import { landmarkFile } from "./landmark-file.js";
import { namePhotos, readPhotoFile, samplePhotos } from "./photos.js";
import { Problem, firstLine } from "./problem.js";

const usage = `Maps the brows of every face on a photo.

  npm start                       the six sample photos of @vladmandic/face-api
  npm start -- PHOTO ...          photos of your own (JPEG, PNG, WebP, AVIF)
  npm start -- --out FOLDER ...   write there; default: out, beside this example

For every face: NAME-face1.png and NAME-face1.svg (photo and map), NAME-face1.json (its landmarks);
and contact-sheet.png for all of them. The browser is CHROMIUM_PATH, or /usr/bin/chromium.`;

/**
 * @typedef {import("./contact-sheet.js").SheetCell} SheetCell
 * @typedef {import("./photos.js").PhotoFile} PhotoFile
 * @typedef {import("./detector.js").Detector} Detector
 */

/** Side of a face's picture, in pixels. */
const pictureSide = 1200;

async function main() {
  const { files, out, help } = readArguments();
  if (help) {
    console.log(usage);
    return;
  }
  const maps = await loadOverlay();
  const photos = namePhotos(files.length > 0 ? files : samplePhotos());
  await mkdir(out, { recursive: true });

  const detector = await openDetector(process.env.CHROMIUM_PATH ?? "/usr/bin/chromium");
  try {
    /** @type {SheetCell[]} */
    const cells = [];
    for (const [index, photo] of photos.entries()) {
      const started = Date.now();
      const report = (/** @type {string} */ result) => {
        const seconds = ((Date.now() - started) / 1000).toFixed(1);
        console.log(
          `[${index + 1}/${photos.length}] ${basename(photo.path)}: ${result} (${seconds} s)`,
        );
      };
      try {
        const found = await mapPhoto(photo, detector, maps, out);
        cells.push(...found.cells);
        report(found.summary);
        for (const cell of found.cells)
          console.log(`      ${cell.title}: ${cell.lines.join("; ")}`);
        if (found.maps === 0) process.exitCode = 1;
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
        process.exitCode = 1;
        report(error.message);
      }
    }
    if (cells.length > 0) {
      const sheet = contactSheet(cells);
      const path = join(out, "contact-sheet.png");
      await writeFile(path, await detector.rasterise(sheet.svg, sheet.width, sheet.height));
      console.log(`${cells.length} faces on ${relative(process.cwd(), path)}`);
    }
  } finally {
    await detector.close();
  }
}

/**
 * @param {PhotoFile} file @param {Detector} detector
 * @param {typeof import("./overlay.js")} maps @param {string} out
 */
async function mapPhoto(file, detector, { overlay, windowAround }, out) {
  const content = await readPhotoFile(file.path);
  const photo = await detector.read(content);
  const sha256 = createHash("sha256").update(content).digest("hex");
  /** @type {SheetCell[]} */
  const cells = [];
  let maps = 0;
  for (const [index, face] of photo.faces.entries()) {
    const name = `${file.name}-face${index + 1}`;
    const window = windowAround(face, photo);
    const href = await photo.cutOut(window, pictureSide);
    const { svg, lines, mapped } = overlay(face, photo, { window, side: pictureSide, href });
    if (mapped) maps += 1;
    await writeFile(join(out, `${name}.svg`), svg);
    await writeFile(
      join(out, `${name}.png`),
      await detector.rasterise(svg, pictureSide, pictureSide),
    );
    await writeFile(
      join(out, `${name}.json`),
      landmarkFile(face, photo, { file: basename(file.path), sha256, face: index + 1 }),
    );
    const png = await detector.rasterise(svg, picture, picture);
    cells.push({ png, title: name, lines });
  }
  return { cells, maps, summary: count(photo.faces.length) };
}

/** @param {number} faces */
function count(faces) {
  if (faces === 0) return "no face found";
  return faces === 1 ? "1 face" : `${faces} faces`;
}

/** The library is the folder two floors up, and has to be built. */
async function loadOverlay() {
  try {
    return await import("./overlay.js");
  } catch (error) {
    const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
    if (code !== "ERR_MODULE_NOT_FOUND" || !message.includes("/brow-geometry/dist/")) throw error;
    throw new Problem(
      "brow-geometry is not built: run npm ci && npm run build in its folder first",
    );
  }
}

function readArguments() {
  const folder = join(import.meta.dirname, "..");
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: { out: { type: "string" }, help: { type: "boolean", short: "h" } },
    });
    return {
      files: positionals,
      out: resolve(values.out ?? join(folder, "out")),
      help: values.help ?? false,
    };
  } catch (error) {
    throw new Problem(`${firstLine(error)}\n\n${usage}`);
  }
}

main().catch((error) => {
  console.error(error instanceof Problem ? error.message : error);
  process.exitCode = 1;
});
