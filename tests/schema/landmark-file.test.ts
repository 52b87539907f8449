import { readFileSync } from "node:fs";
import { fromMarkup, px } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { parseLandmarkFile } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { MARKUP_NAMES } from "../../src/landmarks/internal.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

const sample: unknown = JSON.parse(readFileSync("examples/data/sample-face.json", "utf8"));
const points68 = JSON.parse(readFileSync("tests/fixtures/points68-sample6.json", "utf8")) as {
  faces: readonly { landmarks: unknown }[];
};
const named = {
  markup: "by-hand",
  face: mapFace(syntheticFace(), ([x, y]) => px([600 + 4 * x, 400 - 4 * y])),
};
const detected = { markup: "points-68", coordinates: "pixels", landmarks: [] };

describe("parseLandmarkFile", () => {
  it("reads the sample that the demo maps, ready for `fromMarkup`", () => {
    const file = parseLandmarkFile(sample);
    expect(file).toEqual(sample);
    if (file.markup !== "mesh-478") return expect.fail(file.markup);
    expect(fromMarkup("mesh-478", file.landmarks, file).right.pupil).toHaveLength(3);
  });

  it("reads 68 points with a ruler beside the face and the artist's choices", () => {
    const json = {
      ...detected,
      landmarks: points68.faces[2]?.landmarks,
      reference: { from: [100, 100], to: [300, 100], length: 50 },
      choices: { lead: "left" },
      mirrored: "no",
      image: { width: 1920, height: 1537 },
    };
    const file = parseLandmarkFile(json);
    expect(file).toEqual(json);
    if (file.markup !== "points-68") return expect.fail(file.markup);
    expect(fromMarkup("points-68", file.landmarks, file).left.brow?.upper).toHaveLength(5);
  });

  it("reads keypoints of a whole body, ready for `fromMarkup`", () => {
    const face = points68.faces[2]?.landmarks as readonly (readonly [number, number])[];
    const landmarks = face.flatMap(([x, y]) => [x, y, 2]);
    const json = { markup: "coco-wholebody-face", coordinates: "pixels", landmarks };
    const file = parseLandmarkFile(json);
    expect(file).toEqual(json);
    if (file.markup !== "coco-wholebody-face") return expect.fail(file.markup);
    expect(fromMarkup("coco-wholebody-face", file.landmarks, file).right.brow?.upper).toHaveLength(
      5,
    );
    for (const wrong of [["1"], [Number.NaN], Array.from({ length: 2001 }, () => 0)]) {
      const { message } = refusal(() => parseLandmarkFile({ ...json, landmarks: wrong }));
      expect(message).toContain("landmarks");
    }
  });

  it("reads what the README shows", () => {
    const [, block = ""] = /```json\n([^`]+)```/.exec(readFileSync("README.md", "utf8")) ?? [];
    const json = { ...(JSON.parse(block) as object), landmarks: points68.faces[2]?.landmarks };
    expect(parseLandmarkFile(json)).toEqual(json);
  });

  it("reads a face named by hand", () => {
    expect(parseLandmarkFile(JSON.parse(JSON.stringify(named)))).toEqual(named);
  });

  it("reads points as objects and leaves out what a detector adds to them", () => {
    const landmarks = [{ x: 0.1, y: 0.2, z: -0.1, visibility: 1, presence: 0.9 }, null, [1, 2, 3]];
    expect(parseLandmarkFile({ ...detected, landmarks })).toMatchObject({
      landmarks: [{ x: 0.1, y: 0.2, z: -0.1, visibility: 1 }, null, [1, 2, 3]],
    });
  });

  it("keeps what a file says of its origin, whatever its form", () => {
    const provenance = { photo: ["a", { b: 1 }], by: null };
    expect(parseLandmarkFile({ ...named, provenance })).toMatchObject({ provenance });
  });

  it.each([
    [{ landmarks: [] }, `markup is missing; needs one of ${MARKUP_NAMES.join(", ")}, by-hand`],
    [{ ...detected, markup: "points-99" }, 'markup is "points-99"; needs one of mesh-478'],
    [{ ...detected, coordinates: "percent" }, 'coordinates is "percent"; needs one of pixels'],
    [{ ...detected, landmarks: [[1]] }, "landmarks[0] is [1]; needs [x, y], [x, y, z], an object"],
    [{ ...detected, landmarks: [[1, "2"]] }, 'landmarks[0] is [1, "2"]; needs [x, y]'],
    [{ ...detected, landmarks: [{ x: 1 }] }, 'landmarks[0] is {"x":1}; needs [x, y]'],
    [{ ...detected, landmarks: "1 2" }, 'landmarks is "1 2"; needs a list of at most 2000 items'],
    [
      { ...detected, image: { width: 0, height: 5 } },
      "image.width is 0; needs a finite number above",
    ],
    [
      { ...named, reference: { from: [0, 0], to: [9, 0], length: -5 } },
      "reference.length is -5; needs a finite number above 0",
    ],
    [{ ...named, choices: { lead: "both" } }, 'choices.lead is "both"; needs one of right'],
    [
      { ...named, face: { ...named.face, left: { pupil: 4 } } },
      "face.left.pupil is 4; needs two or",
    ],
    [{ ...named, landmarks: [] }, "landmarks is []; needs another name"],
    ["a text", 'file is "a text"; needs one of mesh-478'],
  ])("refuses what it cannot read: %#", (json, message) => {
    const { code, message: said } = refusal(() => parseLandmarkFile(json));
    expect(code).toBe("not-parsed");
    expect(said).toContain(`parseLandmarkFile: ${message}`);
  });

  it("stops at endless lists", () => {
    const landmarks = Array.from({ length: 200_000 }, () => ["a", "b"]);
    expect(refusal(() => parseLandmarkFile({ ...detected, landmarks })).detail.also).toEqual([]);
  });
});
