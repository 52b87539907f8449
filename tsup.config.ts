import { defineConfig } from "tsup";
import manifest from "./package.json" with { type: "json" };

/** One entry for every subpath that the package exports: `./dist/units/index.js` comes from `src/units/index.ts`. */
const entry: string[] = Object.values(manifest.exports).flatMap((target) =>
  typeof target === "string"
    ? []
    : [target.import.default.replace("./dist/", "src/").replace(/\.js$/, ".ts")],
);

const config: ReturnType<typeof defineConfig> = defineConfig({
  entry,
  format: ["esm", "cjs"],
  target: "es2022",
  // Shared code goes into shared chunks, so that `GeometryError` is one class from every entry point.
  splitting: true,
  clean: true,
  dts: { compilerOptions: { ignoreDeprecations: "6.0" } },
});

export default config;
