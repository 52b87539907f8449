import { readFileSync } from "node:fs";

/** An entry point that package.json exports. */
export interface Entry {
  /** What a user imports, such as `brow-geometry/units`. */
  readonly specifier: string;
  /** The file of the sources that it is built from, such as `src/units/index.ts`. */
  readonly source: string;
  /** The types that a user's compiler reads for `import` and for `require`. */
  readonly types: readonly string[];
}

interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | Conditions>>;
  readonly dependencies: Readonly<Record<string, string>>;
}

interface Conditions {
  readonly import: { readonly types: string; readonly default: string };
  readonly require: { readonly types: string; readonly default: string };
}

const manifest = JSON.parse(readFileSync("package.json", "utf8")) as Manifest;

/** The packages that are installed with the library. */
export const dependencies: readonly string[] = Object.keys(manifest.dependencies);

export const entries: readonly Entry[] = Object.entries(manifest.exports).flatMap(
  ([subpath, target]): readonly Entry[] => {
    if (typeof target === "string") return [];
    return [
      {
        specifier: manifest.name + subpath.slice(1),
        source: target.import.default.replace("./dist/", "src/").replace(/\.js$/, ".ts"),
        types: [target.import.types, target.require.types],
      },
    ];
  },
);
