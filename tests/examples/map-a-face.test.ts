import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { mapFace, px } from "brow-geometry";
import { parsePlan } from "brow-geometry/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parseXml } from "../support/parse-xml.js";
import { syntheticFace } from "../support/synthetic-face.js";

let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "map-a-face-"));
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

interface Run {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the demo in an empty folder, as `npm run demo -- …` does in the project's. */
function demo(...args: readonly string[]): Run {
  return spawnSync(
    process.execPath,
    ["--import", import.meta.resolve("tsx"), resolve("examples/map-a-face/main.ts"), ...args],
    {
      cwd: folder,
      encoding: "utf8",
      env: { ...process.env, TSX_TSCONFIG_PATH: resolve("tsconfig.json") },
    },
  );
}

function fileWith(name: string, content: unknown): string {
  const text = typeof content === "string" ? content : JSON.stringify(content);
  writeFileSync(join(folder, name), text);
  return name;
}

const written = (name: string): string => readFileSync(join(folder, "demo", name), "utf8");

/** The demo runs as a program of its own, and machines that run tests are busy. */
const patience = { timeout: 60_000 };

describe("npm run demo", () => {
  it("maps the sample face in 80 columns, and writes the drawing and the plan", patience, () => {
    const { status, stdout, stderr } = demo();
    expect(stderr).toBe("");
    expect(status).toBe(0);
    for (const part of ["invented", "scale", "tilt", "by ruler", "on the photo", "undecided"]) {
      expect(stdout).toContain(part);
    }
    expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);

    expect(parseXml(written("map.svg")).name).toBe("svg");
    const plan = parsePlan(JSON.parse(written("plan.json")));
    for (const { text } of plan.moves) expect(stdout).toContain(text);
    const words = stdout.replaceAll(/\s+/g, " ");
    for (const { text } of [
      ...plan.reasons,
      ...plan.cautions,
      ...(plan.frame?.scale.notes ?? []),
    ]) {
      expect(words).toContain(text);
    }
    for (const side of ["right", "left"] as const) {
      const { front, frontOnPhoto, tail, tailOnPhoto } = plan.measures[side];
      for (const measure of [front, frontOnPhoto, tail, tailOnPhoto]) {
        expect(stdout).toContain(`${measure?.value.toFixed(1)} ± ${measure?.u.toFixed(1)}`);
      }
      for (const [x, y] of Object.values(plan.dots[side])) {
        expect(stdout).toMatch(new RegExp(` ${Math.abs(x).toFixed(1)} +${y.toFixed(1)}\\b`));
      }
    }
  });
});

describe("npm run demo -- FILE.json", () => {
  const face = mapFace(syntheticFace(), ([x, y]) => px([600 + 4 * x, 400 - 4 * y]));
  const { right, ...rest } = face;
  const points68 = JSON.parse(readFileSync("tests/fixtures/points68-sample6.json", "utf8")) as {
    readonly faces: readonly { readonly landmarks: unknown }[];
  };
  const detected = {
    markup: "points-68",
    coordinates: "pixels",
    landmarks: points68.faces[2]?.landmarks,
  };

  it(
    "maps landmarks that were named by hand, by a ruler and with the artist's choices",
    patience,
    () => {
      const { status, stdout } = demo(
        fileWith("hand.json", {
          markup: "by-hand",
          face,
          reference: { from: [100, 100], to: [300, 100], length: 50 },
          choices: { lead: "left", declared: { upright: true, relaxed: true } },
        }),
      );
      expect(status).toBe(0);
      expect(stdout).toContain("0.2500 mm per pixel");
      expect(stdout).toContain("The left brow leads");
      expect(stdout).not.toContain("invented");
      expect(stdout).not.toContain("Nobody declared");
    },
  );

  it("maps 68 points with a known length beside them", patience, () => {
    const reference = { from: [0, 0], to: [80, 0], length: 50 };
    const { status, stdout } = demo(fileWith("points.json", { ...detected, reference }));
    expect(status).toBe(0);
    expect(stdout).toContain("0.6250 mm per pixel");

    const { landmarks, ...picture } = detected;
    const keypoints = (landmarks as readonly (readonly number[])[]).flatMap((at) => [...at, 1]);
    const coco = { ...picture, markup: "coco-wholebody-face", keypoints, reference };
    expect(demo(fileWith("coco.json", coco)).stdout).toBe(stdout);
  });

  it("says whether the photo will do, and lets the plan carry it", patience, () => {
    const { stdout } = demo();
    const words = stdout.replaceAll(/\s+/g, " ");
    // The sample's head is turned by a little more than its limit, on few pixels.
    expect(words).toContain("retake: The head is turned by 5.6° to the client's left");
    expect(words).toContain("retake: A pixel is 0.67 mm wide");
    const plan = parsePlan(JSON.parse(written("plan.json")));
    const found = plan.cautions.filter(({ code }) => code === "capture-finding");
    // What could not be checked is said, and burdens no plan.
    expect(words).toContain("unchecked: Whether the brows are raised");
    expect(found.map(({ values }) => values.finding)).toEqual([
      "head-turned",
      "too-few-pixels",
      "chin-lowered",
    ]);
  });

  it.each([
    ["absent.json", undefined, "no such file"],
    [".", undefined, "EISDIR"],
    ["broken.json", '{"markup":\n\n  oops', "is not valid JSON"],
    ["text.json", { markup: "by-hand", face: { ...face, left: "x" } }, 'face.left is "x"; needs'],
    ["markup.json", { ...detected, markup: "points-67" }, 'markup is "points-67"; needs one of'],
    ["count.json", { ...detected, landmarks: [[1, 2]] }, "landmarks.length is 1; needs 68 points"],
    ["shares.json", { ...detected, coordinates: "normalised" }, 'needs "pixels" for values from'],
    ["noscale.json", detected, "needs both edges of the iris on at least one side"],
    [
      "missing.json",
      { markup: "by-hand", face: { ...rest, right: { pupil: right.pupil } } },
      "right.brow is missing",
    ],
  ])("refuses %s in one line, with exit code 1", patience, (name, content, message) => {
    rmSync(join(folder, "demo"), { recursive: true, force: true });
    if (content !== undefined) fileWith(name, content);
    const { status, stdout, stderr } = demo(name);
    expect(stderr).toContain(message);
    expect(stderr.startsWith(`${name}: `)).toBe(true);
    expect(stderr.trimEnd().split("\n")).toHaveLength(1);
    expect(stdout).toBe("");
    expect(status).toBe(1);
    expect(existsSync(join(folder, "demo"))).toBe(false);
  });
});
