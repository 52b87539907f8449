import { readFile } from "node:fs/promises";
import { basename, extname, join } from "node:path";
import { Problem } from "./problem.js";
import { packageFolder } from "./server.js";

/**
 * @typedef {object} PhotoFile
 * @property {string} path
 * @property {string} name  Unlike that of any other photo of the run: outputs are named after it.
 */

/** The six photos that come with @vladmandic/face-api. @returns {string[]} */
export function samplePhotos() {
  const folder = join(packageFolder("@vladmandic/face-api"), "demo");
  return [1, 2, 3, 4, 5, 6].map((number) => join(folder, `sample${number}.jpg`));
}

/** @param {readonly string[]} paths @returns {PhotoFile[]} */
export function namePhotos(paths) {
  /** @type {Set<string>} */
  const taken = new Set();
  return paths.map((path) => {
    const plain = basename(path, extname(path));
    let name = plain;
    for (let number = 2; taken.has(name); number += 1) name = `${plain}-${number}`;
    taken.add(name);
    return { path, name };
  });
}

/** @param {string} path */
export async function readPhotoFile(path) {
  return readFile(path).catch((/** @type {NodeJS.ErrnoException} */ error) => {
    const causes = /** @type {Record<string, string>} */ ({
      ENOENT: "there is no such file",
      EISDIR: "this is a folder: name the photos in it",
      EACCES: "this file may not be read",
    });
    throw new Problem(causes[error.code ?? ""] ?? error.message);
  });
}
