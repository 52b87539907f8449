import { readdirSync, statSync } from "node:fs";

/** Throws where `dist` is missing or older than the sources: it would test another library. */
export function requireFreshBuild(): void {
  const built = modified("dist/index.js");
  const sources = readdirSync("src", { recursive: true, encoding: "utf8" });
  const newer = sources.find((path) => path.endsWith(".ts") && modified(`src/${path}`) > built);
  if (newer !== undefined) throw new Error(`src/${newer} is newer than dist: run npm run build`);
}

function modified(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}
