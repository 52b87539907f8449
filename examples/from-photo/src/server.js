import { readFile, readdir } from "node:fs/promises";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { dirname, extname, join } from "node:path";

const kinds = /** @type {Record<string, string>} */ ({
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".wasm": "application/wasm",
});

/**
 * The folder of an installed package.
 * @param {string} name
 * @returns {string}
 */
export function packageFolder(name) {
  return dirname(createRequire(import.meta.url).resolve(`${name}/package.json`));
}

/**
 * @typedef {object} LocalServer
 * @property {string} origin
 * @property {(photo: Buffer) => string} offer  Makes a photo readable by the page and answers with its path.
 * @property {() => void} close
 */

/**
 * Serves the page, the face mesh package and the photos offered so far, on this machine only.
 * @returns {Promise<LocalServer>}
 */
export async function serveLocally() {
  const mesh = packageFolder("@mediapipe/face_mesh");
  const page = join(import.meta.dirname, "page");
  /** @type {Map<string, () => Promise<Buffer>>} */
  const files = new Map();
  for (const [folder, prefix] of /** @type {const} */ ([
    [mesh, "/mesh/"],
    [page, "/"],
  ])) {
    for (const name of await readdir(folder)) {
      files.set(prefix + name, () => readFile(join(folder, name)));
    }
  }

  const server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    const read = files.get(path);
    if (!read) {
      response.writeHead(404).end();
      return;
    }
    read().then(
      (content) => {
        response.writeHead(200, {
          "content-type": kinds[extname(path)] ?? "application/octet-stream",
        });
        response.end(content);
      },
      () => response.writeHead(500).end(),
    );
  });
  await /** @type {Promise<void>} */ (
    new Promise((resolve, reject) => {
      server.once("error", reject);
      server.listen(0, "127.0.0.1", resolve);
    })
  );
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("the server has no port");

  let photos = 0;
  return {
    origin: `http://127.0.0.1:${address.port}`,
    offer: (photo) => {
      photos += 1;
      const path = `/photo/${photos}`;
      files.set(path, () => Promise.resolve(photo));
      return path;
    },
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
