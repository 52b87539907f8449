import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { beforeAll, describe, expect, it } from "vitest";
import { dependencies, entries } from "../package/entries.js";
import { requireFreshBuild } from "./fresh-build.js";

interface Bundle {
  /** Bytes, minified and gzipped. */
  readonly size: number;
  /** Packages whose files can be reached from it. */
  readonly packages: readonly string[];
  /** Modules of the platform that it needs. */
  readonly platform: readonly string[];
}

beforeAll(requireFreshBuild);

describe("a user's bundle", () => {
  it("of one mirror is at most 2.5 kB", async () => {
    const { size } = await bundle('import { mirror } from "brow-geometry"; console.log(mirror);');
    expect(size).toBeLessThanOrEqual(2500);
  });

  it("of the way from a detector's landmarks to a plan is at most 40 kB", async () => {
    const { size } = await bundle(
      `import { faceFrame, fromMarkup, planOnPhoto, requirePlannable, scaleFromIris } from "brow-geometry";
      console.log(faceFrame, fromMarkup, planOnPhoto, requirePlannable, scaleFromIris);`,
    );
    expect(size).toBeLessThanOrEqual(40_000);
  });

  it.each([
    [
      "readings by ruler, compared",
      5_500,
      { "brow-geometry": ["compareSides", "measuresFromReadings", "readRuler"] },
    ],
    [
      "a course, from sheets to grades in words",
      42_500,
      {
        "brow-geometry": ["averageOf", "measuresFromReadings", "readRuler", "say"],
        "brow-geometry/grading": ["gradeMap"],
        "brow-geometry/schema": ["parseReadingSheet", "parseRubric"],
      },
    ],
    [
      "a study, from CSV to a table of measures",
      61_000,
      {
        "brow-geometry": [
          ...["checkCapture", "faceFrame", "fromMarkup", "planOnPhoto", "requirePlannable"],
          "scaleFromIris",
        ],
        "brow-geometry/files": ["readCsv", "writeTable"],
        "brow-geometry/units": ["attempt"],
      },
    ],
    [
      "a photo, its check, plan and picture",
      84_000,
      {
        "brow-geometry": [
          ...["checkCapture", "drawPlan", "fromMarkup", "planOnPhoto", "requirePlannable"],
          ...["scaleFromIris", "turnToFront"],
        ],
      },
    ],
    [
      "a studio app, from photo to record",
      110_000,
      {
        "brow-geometry": [
          ...["checkCapture", "checkDrawn", "drawPlan", "fromMarkup", "planOnPhoto", "recordOf"],
          ...["requirePlannable", "say", "scaleFromIris", "scaleFromReference", "turnToFront"],
          "workSteps",
        ],
        "brow-geometry/drawing": ["drawChoices", "drawSheet", "nearestDot", "placeUnder"],
        "brow-geometry/mapping": ["allowedPin", "correctionsOf", "weighChoices"],
        "brow-geometry/schema": ["parseRecord"],
      },
    ],
  ])("of %s is at most %d bytes", async (_, most, used) => {
    const names = Object.entries(used);
    const imports = names.map(([from, list]) => `import { ${list.join(", ")} } from "${from}";`);
    const { size } = await bundle(
      `${imports.join("\n")} console.log(${names.flatMap(([, list]) => list).join(", ")});`,
    );
    expect(size).toBeLessThanOrEqual(most);
  });

  it("of the whole root, pictures and sentences included, is at most 95 kB", async () => {
    const { size } = await bundle('import * as all from "brow-geometry"; console.log(all);');
    expect(size).toBeLessThanOrEqual(95_000);
  });

  it("of every way to parse is at most 15 kB with zod", async () => {
    const { size } = await bundle(
      `import { parseChoices, parseFace, parseLandmarkFile, parsePlan, parseRecord } from "brow-geometry/schema";
      console.log(parseChoices, parseFace, parseLandmarkFile, parsePlan, parseRecord);`,
    );
    expect(size).toBeLessThanOrEqual(15_000);
  });

  it("of the schemas and JSON Schema is at most 22 kB with zod, which shows that the next check would see it", async () => {
    const { size, packages } = await bundle(
      'import * as all from "brow-geometry/schema"; console.log(all);',
    );
    expect(size).toBeLessThanOrEqual(22_000);
    expect(packages).toContain("zod");
  });

  it.each(entries.filter(({ specifier }) => !specifier.endsWith("/schema")))(
    "of $specifier reaches neither zod, nor an undeclared package, nor Node, and the CSV parser for files only",
    async ({ specifier }) => {
      const { packages, platform } = await bundle(
        `import * as all from "${specifier}"; console.log(all);`,
      );
      expect(packages).not.toContain("zod");
      expect(packages.includes("papaparse")).toBe(specifier.endsWith("/files"));
      expect(packages.filter((name) => !dependencies.includes(name))).toEqual([]);
      expect(platform).toEqual([]);
    },
  );
});

async function bundle(contents: string): Promise<Bundle> {
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: process.cwd() },
    bundle: true,
    minify: true,
    format: "esm",
    mainFields: ["browser", "module", "main"],
    external: ["node:*"],
    write: false,
    metafile: true,
    // A bare import of a shared chunk without side effects is dropped, which is as it should be.
    logLevel: "error",
    // The settings of the sources would lead the library's name to them; a user has the built files.
    tsconfigRaw: {},
  });
  const text = outputFiles.map((file) => file.text).join("");
  const [output] = Object.values(metafile.outputs);
  const names = Object.keys(metafile.inputs).map(
    (file) => /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1],
  );
  return {
    size: gzipSync(text, { level: 9 }).length,
    packages: [...new Set(names.filter((name) => name !== undefined))],
    platform: (output?.imports ?? []).map(({ path }) => path),
  };
}
