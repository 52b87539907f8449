import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { mapAFace } from "../../examples/map-a-face/map-a-face.js";

let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "demo-"));
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
  const main = resolve("examples/map-a-face/main.ts");
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", import.meta.resolve("tsx"), main, ...args],
    {
      cwd: folder,
      encoding: "utf8",
      env: { ...process.env, TSX_TSCONFIG_PATH: resolve("tsconfig.json") },
    },
  );
  return { status, stdout, stderr };
}

const written = (name: string): string => readFileSync(join(folder, "demo", name), "utf8");

describe("the demo as a program", () => {
  it("refuses a file in one line, with exit code 1, and writes nothing", () => {
    writeFileSync(join(folder, "broken.json"), "{");
    const { status, stdout, stderr } = demo("broken.json");
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr).toMatch(/^broken\.json: .+\n$/);
    expect(existsSync(join(folder, "demo"))).toBe(false);
  });

  it("prints the map and writes the drawing and the plan", () => {
    const map = mapAFace();
    if (map.kind === "problem") expect.fail(map.text);
    const { status, stdout, stderr } = demo();
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain(map.text);
    expect(stdout.split("\n").filter((line) => line.length > 80)).toEqual([]);
    expect(written("map.svg")).toBe(map.drawing);
    expect(JSON.parse(written("plan.json"))).toEqual(JSON.parse(JSON.stringify(map.plan)));
  });
});
