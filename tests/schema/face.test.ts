import { test } from "@fast-check/vitest";
import { type Face, type GeometryError, px } from "brow-geometry";
import { type GeometryErrorDetail } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { faceSchema, parseFace } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { anyFlatPoint } from "../support/arbitraries.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

const onPhoto: Face<"px"> = mapFace(syntheticFace(), ([x, y]) => px([600 + 4 * x, 400 - 4 * y]));

function refused(json: unknown): GeometryError {
  return refusal(() => parseFace(json, "px"));
}

function firstProblem(json: unknown): Pick<GeometryErrorDetail, "field" | "value"> {
  const { field, value } = refused(json).detail;
  return { field, value };
}

const noFace = { right: {}, left: {}, midline: {} };

describe("parseFace", () => {
  it("reads a face that was written to JSON, in either space", () => {
    expect(parseFace(JSON.parse(JSON.stringify(syntheticFace())), "mm")).toEqual(syntheticFace());
    expect(parseFace(JSON.parse(JSON.stringify(onPhoto)), "px")).toEqual(onPhoto);
  });

  it("reads everything that a face may carry", () => {
    const face: Face<"px"> = {
      ...onPhoto,
      right: { ...onPhoto.right, pupil: px([474, 400, -3.5]) },
      source: {
        markup: "by-hand",
        uncertainty: { default: 0.3 as never, landmarks: { alare: 1.2 as never } },
        ringFactor: { value: 1.11, u: 0.02 },
        depth: "estimated",
      },
      standIns: [{ landmark: "alare", instead: "outer point of the nostril row" }],
      symmetricPoints: {
        pairs: [{ right: px([500, 300, 4]), left: px([700, 300, 4]) }],
        middle: [px([600, 300])],
      },
      notes: [
        { code: "sides-swapped", text: "Sides were swapped.", values: { count: 2, by: "x" } },
      ],
    };
    expect(parseFace(JSON.parse(JSON.stringify(face)), "px")).toEqual(face);
  });

  it("answers a copy", () => {
    const json = structuredClone(onPhoto);
    const face = parseFace(json, "px");
    expect(face).not.toBe(json);
    expect(face.left.pupil).not.toBe(json.left.pupil);
  });

  test.prop([anyFlatPoint<"mm">(), anyFlatPoint<"mm">()])("keeps every digit", (one, other) => {
    const face = { right: { pupil: one }, left: { pupil: other }, midline: {} };
    expect(JSON.stringify(parseFace(JSON.parse(JSON.stringify(face)), "mm"))).toBe(
      JSON.stringify(face),
    );
  });

  it.each([
    ["text for a coordinate", { ...noFace, left: { pupil: [560, "498"] } }, "left.pupil[1]", "498"],
    ["null for a point", { ...noFace, left: { pupil: null } }, "left.pupil", null],
    ["one coordinate", { ...noFace, left: { pupil: [560] } }, "left.pupil", [560]],
    ["four coordinates", { ...noFace, left: { pupil: [1, 2, 3, 4] } }, "left.pupil", [1, 2, 3, 4]],
    ["an object for a point", { ...noFace, left: { pupil: { x: 1 } } }, "left.pupil", { x: 1 }],
    ["NaN", { ...noFace, left: { pupil: [1, Number.NaN] } }, "left.pupil[1]", Number.NaN],
    ["infinity", { ...noFace, left: { pupil: [-Infinity, 1] } }, "left.pupil[0]", -Infinity],
    ["a missing side", { right: {}, midline: {} }, "left", undefined],
    ["an undefined landmark", { ...noFace, left: { pupil: undefined } }, "left.pupil", undefined],
    ["an unknown key", { ...noFace, left: { pupill: [1, 2] } }, "left.pupill", [1, 2]],
    ["an unknown key at the top", { ...noFace, unit: "px" }, "unit", "px"],
    [
      "a prototype",
      JSON.parse('{"__proto__":1,"right":{},"left":{},"midline":{}}'),
      "__proto__",
      1,
    ],
    ["a border of no points", { ...noFace, left: { brow: { upper: [] } } }, "left.brow.upper", []],
    [
      "a brow without an upper border",
      { ...noFace, left: { brow: {} } },
      "left.brow.upper",
      undefined,
    ],
    [
      "a bad point of a border",
      {
        ...noFace,
        left: {
          brow: {
            upper: [
              [1, 2],
              [3, true],
            ],
          },
        },
      },
      "left.brow.upper[1][1]",
      true,
    ],
    ["null", null, "face", null],
    ["a list", [], "face", []],
    ["text", "{}", "face", "{}"],
  ])("refuses %s and names its place", (_, json, field, value) => {
    expect(firstProblem(json)).toEqual({ field, value });
    expect(refused(json).code).toBe("not-parsed");
  });

  it.each([
    [
      { ...noFace, left: { pupil: [1, "2"] } },
      'parseFace: left.pupil[1] is "2"; needs a finite number',
    ],
    [
      { ...noFace, left: { pupil: "2" } },
      'parseFace: left.pupil is "2"; needs two or three finite numbers',
    ],
    [
      { ...noFace, eyes: 1 },
      "parseFace: eyes is 1; needs another name: one of right, left, midline, source, standIns, symmetricPoints, notes",
    ],
    [
      { right: {}, left: {} },
      "parseFace: midline is missing; needs an object with glabella, sellion, pronasale, subnasale, labialeSuperius, stomion, stomionSuperius, stomionInferius, menton",
    ],
    [
      {
        ...noFace,
        source: {
          markup: "by-hand",
          uncertainty: { default: -1 },
          ringFactor: { value: 1, u: 0 },
          depth: "none",
        },
      },
      "parseFace: source.uncertainty.default is -1; needs a finite number of at least 0",
    ],
  ])("says what is needed: %#", (json, message) => {
    expect(refused(json).message).toBe(message);
  });

  it("says the first three problems and counts the rest", () => {
    const { message, detail } = refused({
      right: { pupil: 1, alare: 2 },
      left: 3,
      midline: { menton: [4, "5"] },
    });
    expect(message).toMatch(
      /^parseFace: right\.pupil is 1; .*right\.alare is 2; .*left is 3; .*\. And 1 more$/,
    );
    expect(detail.also).toHaveLength(3);
  });

  it("refuses shares of the picture as pixels", () => {
    const shares = { right: { pupil: [0.42, 0.36] }, left: { pupil: [0.58, 0.36] }, midline: {} };
    expect(refused(shares).message).toMatch(/needs pixels: shares of the picture/);
    expect(parseFace(shares, "mm")).toEqual(shares);
    expect(parseFace(noFace, "px")).toEqual(noFace);
  });

  it("stops at endless lists instead of reading them", () => {
    const endless = Array.from({ length: 200_000 }, () => ["a", "b", "c"]);
    for (const json of [
      { ...noFace, left: { brow: { upper: endless } } },
      { ...noFace, symmetricPoints: { pairs: endless, middle: [] } },
      { ...noFace, notes: endless },
      { ...noFace, standIns: endless },
    ]) {
      expect(refused(json).detail.also).toEqual([]);
    }
  });
});

describe("faceSchema", () => {
  it("is a schema that a program can make part of its own", () => {
    expect(faceSchema("px").safeParse(onPhoto).success).toBe(true);
    expect(faceSchema("mm").safeParse({}).success).toBe(false);
  });
});
