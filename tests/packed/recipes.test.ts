import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative, resolve } from "node:path";
import ts from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { follow, recipeSteps, type Step } from "./recipe-steps.js";

const measure = recipeSteps("How to add a measure");
const guide = recipeSteps("How to add a guide");
const markup = recipeSteps("How to add a markup");
const face = syntheticFace();

/** An invented face in the points of the recipe's markup: seven of the right side, then those of the left. */
const points: readonly (readonly [number, number])[] = [
  [30, 60],
  [40, 60],
  [50, 60],
  [52, 90],
  [55, 40],
  [40, 35],
  [25, 42],
  [95, 42],
  [80, 35],
  [65, 40],
  [68, 90],
  [70, 60],
  [80, 60],
  [90, 60],
];

/** What a user does with the new entries. */
const program = `
import { checkReadings, compareSides, correctionOf, drawPlan, ENGLISH, fromMarkup, measured, planBrows, requirePlannable, say } from "brow-geometry";
import { describeMarkup } from "brow-geometry/landmarks";
import { drawChoices } from "brow-geometry/drawing";
import { weighChoices } from "brow-geometry/mapping";
import { parseChoices, parseFace, parseLandmarkFile, parsePlan } from "brow-geometry/schema";

const face = requirePlannable(parseFace(${JSON.stringify(face)}, "mm"));
// The hair starts farther in: without this the guide would yield to it.
const choices = parseChoices({ start: "medial-limbus-vertical", keepHair: 0 });
const plan = planBrows(face, choices);
const arched = planBrows(face, parseChoices({ arch: "mid-eye-vertical" }));
const weighed = weighChoices(face, [choices]);
const landmarks: [number, number][] = ${JSON.stringify(points)};
const file = parseLandmarkFile({ markup: "points-14", coordinates: "pixels", landmarks });
const right = { bodyDistance: measured(30, 0.2) };
const left = { bodyDistance: measured(33, 0.2) };
console.log(
  JSON.stringify({
    start: plan.dots.left.upperStart[0],
    arch: arched.dots.left.upperArch[0],
    body: plan.dots.left.upperBody[0],
    reasons: [...plan.reasons, ...arched.reasons].map((reason) => say(reason)),
    measured: parsePlan(JSON.parse(JSON.stringify(plan))).measures.left.bodyDistance,
    compared: plan.comparison.differences.map(({ measure }) => measure),
    drawn: drawPlan(plan),
    weighed: weighed.rows.map(({ kind }) => kind),
    drawnChoices: drawChoices(face, weighed),
    differences: compareSides({ right, left }).differences.map(({ measure, decision }) => [measure, decision?.outcome]),
    corrections: checkReadings({ right: {}, left: right }, { right: {}, left }).flatMap((one) => correctionOf(one) ?? []).map((correction) => say(correction)),
    file: file.markup,
    face: fromMarkup("points-14", landmarks, { coordinates: "pixels", alare: "wing" }),
    markup: describeMarkup("points-14"),
    beyond: describeMarkup("points-14").beyond.map((one) => say(one)),
    title: ENGLISH.terms.markups["points-14"],
    noted: (fromMarkup("points-14", landmarks, { coordinates: "pixels" }).notes ?? []).map((note) => say(note)),
  }),
);
`;

interface Printed {
  readonly start: number;
  readonly arch: number;
  readonly body: number;
  readonly reasons: readonly string[];
  readonly measured: { readonly value: number; readonly u: number };
  readonly compared: readonly string[];
  readonly drawn: string;
  readonly weighed: readonly string[];
  readonly drawnChoices: string;
  readonly differences: readonly unknown[];
  readonly corrections: readonly string[];
  readonly file: string;
  readonly face: object;
  readonly markup: object;
  readonly beyond: readonly string[];
  readonly title: string;
  readonly noted: readonly string[];
}

it("the compiler names the files of a recipe's last step, where it is left out", () => {
  const recipes = [measure, guide, markup];
  const given = follow(recipes.flatMap((steps) => steps.slice(0, -1)));
  const missing = recipes.flatMap((steps) => steps.slice(-1).flatMap(filesOf));
  // One of code, and words for two recipes in two languages.
  expect(missing).toHaveLength(5);
  const named = new Set(problems(given).map((problem) => problem.replace(/: [^]*/, "")));
  expect([...named].sort()).toEqual(missing.sort());
});

describe("the recipes", () => {
  const all = follow([...measure, ...guide, ...markup]);
  let folder = "";
  let printed: Printed;

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "recipes-"));
    for (const part of ["src", "package.json", "tsconfig.json", "tsup.config.ts"]) {
      cpSync(part, join(folder, part), { recursive: true });
    }
    symlinkSync(resolve("node_modules"), join(folder, "node_modules"), "junction");
    for (const [file, text] of all) writeFileSync(join(folder, file), text);
    run("node_modules/tsup/dist/cli-default.js");
    const { outputText } = ts.transpileModule(program, {
      compilerOptions,
      fileName: "program.mts",
    });
    writeFileSync(join(folder, "program.mjs"), outputText);
    printed = JSON.parse(run("program.mjs")) as Printed;
  });

  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  function run(file: string): string {
    const options = { cwd: folder, encoding: "utf8" } as const;
    const { status, stdout, stderr } = spawnSync(process.execPath, [file], options);
    if (status !== 0) throw new Error(`${file}\n${stdout}${stderr}`);
    return stdout;
  }

  it.each([
    ["a measure", measure, 4],
    ["a guide", guide, 4],
    ["a markup", markup, 4],
  ])("for %s takes so many files as it says", (_, steps, files) => {
    expect(follow(steps).size).toBe(files);
  });

  it("compile, and so does what uses the new entries", () => {
    expect(problems(new Map([...all, ["program.mts", program]]))).toEqual([]);
  });

  it("give a measure that plans carry, comparisons decide and corrections phrase", () => {
    const { measured, body, compared, differences, corrections } = printed;
    expectClose(measured.value, body, 1e-9);
    expect(measured.u).toBeGreaterThan(0);
    expect(measured.u).toBeLessThan(5);
    expect(compared).toContain("bodyDistance");
    expect(differences).toEqual([["bodyDistance", "outside"]]);
    expect(corrections).toEqual(["left body from the midline: 3 mm too far out"]);
  });

  it("give guides that choices accept, plans follow, and reasons and drawings say", () => {
    const { start, arch, reasons, weighed } = printed;
    const { limbusMedial, endocanthion, exocanthion } = face.left;
    expectClose(start, limbusMedial[0], 1e-9);
    expectClose(arch, (endocanthion[0] + exocanthion[0]) / 2, 1e-9);
    expect(reasons).toContain("Start as chosen: above the inner edge of the iris.");
    expect(reasons).toContain("Arch as chosen: above the middle of the eye.");
    expect(weighed).toEqual(["usable"]);
    expect(wordsIn(printed.drawn)).toContain("start: above the inner edge of the iris");
    expect(wordsIn(printed.drawnChoices)).toContain("start above the inner edge of the iris");
    const beyond = printed.beyond;
    expect(beyond).toContain("start above the inner edge of the iris (no inner edge of the iris)");
    expect(beyond.join()).not.toContain("arch above the middle of the eye");
  });

  it("give a markup that files name, faces are read from and that is described", () => {
    expect(printed.file).toBe("points-14");
    expect(printed.face).toMatchObject({
      right: {
        endocanthion: [50, 60],
        alare: [52, 90],
        brow: {
          upper: [
            [55, 40],
            [40, 35],
            [25, 42],
          ],
        },
      },
      left: {
        endocanthion: [70, 60],
        alare: [68, 90],
        brow: {
          upper: [
            [65, 40],
            [80, 35],
            [95, 42],
          ],
        },
      },
      source: { markup: "points-14" },
    });
    expect(printed.markup).toMatchObject({
      size: 14,
      landmarks: ["endocanthion", "exocanthion", "pupil", "alare", "brow"],
      alare: ["wing"],
    });
    expect(printed.title).toBe("14 points (invented)");
    expect(printed.noted).toEqual([
      "The nose wing is only approximated: side of the nose. Check by eye whatever rests on it.",
      "The brow is only approximated: one line of three points, without thickness. Check by eye whatever rests on it.",
    ]);
  });
});

/** The words of pictures, lines that were broken joined again. */
function wordsIn(svg: string): string {
  return svg.replaceAll(/<[^>]*>/g, " ").replaceAll(/\s+/g, " ");
}

function filesOf(step: Step): readonly string[] {
  return [...new Set(step.map(({ file }) => file))];
}

const { options: compilerOptions, fileNames } = ts.parseJsonConfigFileContent(
  {
    ...(ts.readConfigFile("tsconfig.json", (path) => ts.sys.readFile(path)).config as object),
    include: ["src"],
  },
  ts.sys,
  process.cwd(),
);
const host = ts.createCompilerHost(compilerOptions);
const read = new Map<string, ts.SourceFile | undefined>();

/** What the compiler says of the sources with other texts in place of some files, as `file: message`. */
function problems(texts: ReadonlyMap<string, string>): readonly string[] {
  const overlaid = new Map([...texts].map(([file, text]) => [resolve(file), text]));
  const program = ts.createProgram({
    rootNames: [...new Set([...fileNames.map((file) => resolve(file)), ...overlaid.keys()])],
    options: compilerOptions,
    host: {
      ...host,
      fileExists: (file) => overlaid.has(resolve(file)) || host.fileExists(file),
      getSourceFile: (file, language) => {
        const text = overlaid.get(resolve(file));
        if (text !== undefined) return ts.createSourceFile(file, text, language, true);
        if (!read.has(file)) read.set(file, host.getSourceFile(file, language));
        return read.get(file);
      },
    },
  });
  return ts.getPreEmitDiagnostics(program).map(({ file, messageText }) => {
    const where = file === undefined ? "" : relative(process.cwd(), file.fileName);
    return `${where}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
  });
}
