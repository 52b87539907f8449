import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import type { Library } from "./cases.js";

/** The library under a folder in one file, as apps have it: module by module, as tests load it, it is half as fast. */
export async function bundled(root: string): Promise<Library> {
  const scratch = mkdtempSync(join(tmpdir(), "brow-geometry-"));
  const outfile = join(scratch, "library.mjs");
  try {
    await build({
      stdin: {
        contents:
          'export * from "./src/index.ts"; export * from "./src/mapping/index.ts"; export * from "./src/grading/index.ts";',
        resolveDir: root,
      },
      bundle: true,
      format: "esm",
      platform: "node",
      outfile,
      logLevel: "error",
    });
    return (await import(/* @vite-ignore */ pathToFileURL(outfile).href)) as Library;
  } finally {
    rmSync(scratch, { recursive: true });
  }
}
