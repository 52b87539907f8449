import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Plugin } from "vite";

/** What the face mesh asks for at run time, by the names under which it asks. */
const FILES = [
  "face_mesh.js",
  "face_mesh.binarypb",
  "face_mesh_solution_packed_assets.data",
  "face_mesh_solution_packed_assets_loader.js",
  "face_mesh_solution_simd_wasm_bin.js",
  "face_mesh_solution_simd_wasm_bin.wasm",
];

const KINDS: Readonly<Record<string, string>> = {
  js: "text/javascript",
  wasm: "application/wasm",
};

/** Serves the face finder's files from the page's own folder, `mesh/`: no other machine is ever asked. */
export function meshFiles(): Plugin {
  const folder = dirname(createRequire(import.meta.url).resolve("@mediapipe/face_mesh"));
  const read = (name: string): Buffer => readFileSync(join(folder, name));
  return {
    name: "mesh-files",
    configureServer(server) {
      server.middlewares.use("/mesh", (request, response, next) => {
        const name = (request.url ?? "").replace(/^\/|\?.*$/g, "");
        if (!FILES.includes(name)) {
          next();
          return;
        }
        const kind = KINDS[name.split(".").at(-1) ?? ""] ?? "application/octet-stream";
        response.setHeader("content-type", kind);
        response.end(read(name));
      });
    },
    generateBundle() {
      for (const name of FILES) {
        this.emitFile({ type: "asset", fileName: `mesh/${name}`, source: read(name) });
      }
    },
  };
}
