import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowPlan, px, say, workSteps } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { parsePlan } from "brow-geometry/schema";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { mapAFace, type Outcome } from "../../examples/map-a-face/map-a-face.js";
import { parseXml } from "../support/parse-xml.js";
import { syntheticFace } from "../support/synthetic-face.js";

let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "map-a-face-"));
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

type Mapped = Extract<Outcome, { readonly kind: "map" }>;

/** The map of a file in the empty folder, or of the sample face. */
function mapped(file?: string): Mapped {
  const outcome = mapAFace(file === undefined ? undefined : join(folder, file));
  return outcome.kind === "map" ? outcome : expect.fail(outcome.text);
}

function fileWith(name: string, content: unknown): string {
  const text = typeof content === "string" ? content : JSON.stringify(content);
  writeFileSync(join(folder, name), text);
  return name;
}

/** The plan as it is written, read back. */
const readBack = ({ plan }: Mapped): BrowPlan => parsePlan(JSON.parse(JSON.stringify(plan)));

describe("npm run demo", () => {
  it("maps the sample face in 80 columns and 60 lines, with the drawing and the plan", () => {
    const map = mapped();
    const { text: said } = map;
    for (const part of ["invented", "mm per pixel", "STEPS", "BY RULER", "WHY", "MIND"]) {
      expect(said).toContain(part);
    }
    const lines = said.split("\n");
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    // Two more lead the way to the picture.
    expect(lines.length + 2).toBeLessThanOrEqual(60);
    expect(said).not.toContain("0.0 ± 0.0");
    // Codes and Latin are for programs.
    expect(said).not.toMatch(/[a-z]+-[a-z]+-[a-z]+|alare|canthion|limbus/);

    expect(parseXml(map.drawing).name).toBe("svg");
    const plan = readBack(map);
    const words = said.replaceAll(/\s+/g, " ");
    for (const step of workSteps(plan)) expect(words).toContain(say(step));
    expect(words).toContain(plan.reasons[0] && say(plan.reasons[0]));
    for (const caution of plan.cautions.slice(0, 3)) expect(words).toContain(say(caution));
    for (const side of ["right", "left"] as const) {
      const { front, tail, exocanthionToTailEnd } = plan.measures[side];
      for (const measure of [front, tail, exocanthionToTailEnd]) {
        expect(said).toContain(`${measure?.value.toFixed(1)} ± ${measure?.u.toFixed(1)}`);
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

  it("maps landmarks that were named by hand, by a ruler and with the artist's choices", () => {
    const { text: said } = mapped(
      fileWith("hand.json", {
        markup: "by-hand",
        face,
        reference: { from: [100, 100], to: [300, 100], length: 50 },
        choices: { lead: "left", declared: { upright: true, relaxed: true } },
      }),
    );
    expect(said).toContain("0.2500 mm per pixel");
    expect(said).toContain("The left brow leads");
    expect(said).not.toContain("invented");
    expect(said).not.toContain("Nobody declared");
  });

  it("maps 68 points with a known length beside them", () => {
    const reference = { from: [0, 0], to: [80, 0], length: 50 };
    const { text: said } = mapped(fileWith("points.json", { ...detected, reference }));
    expect(said).toContain("0.6250 mm per pixel");

    const { landmarks, ...picture } = detected;
    const keypoints = (landmarks as readonly (readonly number[])[]).flatMap((at) => [...at, 1]);
    const coco = { ...picture, markup: "coco-wholebody-face", landmarks: keypoints, reference };
    // The detector of these keypoints was not measured: they are not corrected.
    const asFound = mapped(fileWith("found.json", { ...detected, reference, correct: false }));
    expect(mapped(fileWith("coco.json", coco)).text).toBe(asFound.text);
    expect(asFound.text).not.toBe(said);
  });

  it("says whether the photo will do, and lets the plan carry it", () => {
    const map = mapped();
    const { text: said } = map;
    const words = said.replaceAll(/\s+/g, " ");
    // The sample's head is turned by a little more than its limit, on few pixels.
    expect(words).toContain("retake: The head is turned by 5.6° to the client's left");
    expect(words).toContain("retake: A pixel is 0.67 mm wide");
    const plan = readBack(map);
    const found = plan.cautions.filter(({ code }) => code === "capture-finding");
    // What could not be checked is said, and burdens no plan.
    expect(words).toContain("unchecked: 5 things");
    expect(found.map(({ finding }) => finding?.code)).toEqual([
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
  ])("refuses %s in one line", (name, content, message) => {
    if (content !== undefined) fileWith(name, content);
    const path = join(folder, name);
    const { kind, text } = mapAFace(path);
    expect(kind).toBe("problem");
    expect(text).toContain(message);
    expect(text.startsWith(`${path}: `)).toBe(true);
    expect(text.trimEnd().split("\n")).toHaveLength(1);
  });
});
