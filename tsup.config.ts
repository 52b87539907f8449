import type { Options } from "tsup";
import manifest from "./package.json" with { type: "json" };

/** One entry for every subpath that the package exports: `./dist/units/index.js` comes from `src/units/index.ts`. */
const entry: string[] = Object.values(manifest.exports).flatMap((target) =>
  typeof target === "string"
    ? []
    : [target.import.default.replace("./dist/", "src/").replace(/\.js$/, ".ts")],
);

const shared: Options = { target: "es2022", silent: true };

const config: Options[] = [
  // One file a module, so that a bundler drops those that an app does not use, constants and all.
  { ...shared, entry: ["src/**/*.ts"], format: "esm", bundle: false },
  // What entries share in chunks of its own, so that `GeometryError` is one class from all of them.
  { ...shared, entry, format: "cjs", splitting: true },
  // TypeScript 6 deprecates an option that tsup sets.
  {
    ...shared,
    entry,
    format: ["esm", "cjs"],
    dts: { only: true, compilerOptions: { ignoreDeprecations: "6.0" } },
  },
];

export default config;
