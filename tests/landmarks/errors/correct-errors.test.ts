import { fc, test } from "@fast-check/vitest";
import { type Face, fromMarkup, mm, px } from "brow-geometry";
import type { DeepPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { correctErrors } from "../../../src/landmarks/errors/correct-errors.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import {
  AS_FOUND,
  faceOfMesh,
  faceOfPoints68,
  frontalMesh,
  frontalPoints68,
} from "../../support/sample-faces.js";

const { image } = frontalMesh;
const inPixels = frontalMesh.landmarks.map(([x = 0, y = 0, z = 0]) => [
  x * image.width,
  y * image.height,
  z * image.width,
]);
const pixels = { coordinates: "pixels" } as const;

/** Landmarks without what is said of them. */
function places({ right, left, midline }: Face<"px">): unknown {
  return { right, left, midline };
}

describe("the correction of a detector's errors", () => {
  it.each([
    ["the mesh", faceOfMesh(frontalMesh, AS_FOUND), faceOfMesh(frontalMesh)],
    ["68 points", faceOfPoints68(frontalPoints68, AS_FOUND), faceOfPoints68(frontalPoints68)],
  ])("lowers and lengthens the tails of %s, and says so", (_, found, corrected) => {
    for (const side of ["right", "left"] as const) {
      const [before, after] = [found, corrected].map((face) => face[side].brow?.upper.at(-1));
      const outwards = side === "left" ? 1 : -1;
      expect((after?.[1] ?? 0) - (before?.[1] ?? 0)).toBeGreaterThan(0);
      expect(outwards * ((after?.[0] ?? 0) - (before?.[0] ?? 0))).toBeGreaterThan(0);
    }
    expect([found.source?.corrected, corrected.source?.corrected]).toEqual([undefined, true]);
    expect(corrected.notes?.map(({ code }) => code)).toContain("corrected");
    expect(found.notes?.map(({ code }) => code)).not.toContain("corrected");
  });

  it("keeps a mesh's brows on the skin they were found on, and leaves its further points alone", () => {
    const [found, corrected] = [faceOfMesh(frontalMesh, AS_FOUND), faceOfMesh(frontalMesh)];
    expect(corrected.symmetricPoints).toEqual(found.symmetricPoints);
    const line = [0, 1, 2, 3, 4].map((at) => px([400 + 50 * at, 300 - 10 * at, -20 * at]));
    // A border that is straight in space, at a slant: what moves along it stays on it.
    const straight = { ...found, left: { ...found.left, brow: { upper: line } } };
    const { left } = correctErrors(straight, { correct: true }, true);
    left.brow?.upper.forEach((point, at) => {
      const from = line[at] as DeepPoint<"px">;
      const along = ((point[0] - from[0]) * 50 - (point[1] - from[1]) * 10) / (50 ** 2 + 10 ** 2);
      expect(point[2]).toBeCloseTo(from[2] - 20 * along, 9);
    });
    expect(left.brow?.upper[4]?.[2]).toBeLessThan(-80);
  });

  it("keeps the ends of a lid at the corners of its eye", () => {
    const { right } = faceOfPoints68(frontalPoints68);
    expectClose(right.upperLid?.[0], right.endocanthion, 1e-9);
    expectClose(right.lowerLid?.at(-1), right.exocanthion, 1e-9);
  });

  it.each([
    ["is switched off", { correct: false }],
    ["are told of a hand that is surer", { uncertainty: { default: mm(0.26) } }],
    ["are told how sure the brow is", { uncertainty: { landmarks: { brow: mm(0.26) } } }],
  ])("moves nothing where options %s it", (_, options) => {
    const face = fromMarkup("mesh-478", inPixels, { ...pixels, ...options });
    expectClose(places(face), places(faceOfMesh(frontalMesh, AS_FOUND)), 1e-9);
    expect(face.source?.corrected).toBeUndefined();
  });

  it("is made all the same where it is asked for", () => {
    const uncertainty = { default: mm(0.9) };
    const face = fromMarkup("mesh-478", inPixels, { ...pixels, correct: true, uncertainty });
    expectClose(places(face), places(faceOfMesh(frontalMesh)), 1e-9);
    expect(face.source?.uncertainty.default).toBe(0.9);
  });

  it("knows nothing of markups whose detectors were not measured, nor of a face without an eye corner", () => {
    const keypoints = frontalPoints68.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 2]);
    expect(fromMarkup("coco-wholebody-face", keypoints, pixels).source?.corrected).toBeUndefined();
    const cornerless = fromMarkup("mesh-478", inPixels, { ...pixels, missing: [33] });
    expect(cornerless.source?.corrected).toBeUndefined();
  });

  it("moves the usual point of alare only", () => {
    const of = (correct: boolean): unknown =>
      fromMarkup("mesh-478", inPixels, { ...pixels, alare: "wing-base", correct }).left.alare;
    expect(of(true)).toEqual(of(false));
    expect(faceOfMesh(frontalMesh).left.alare).not.toEqual(
      faceOfMesh(frontalMesh, AS_FOUND).left.alare,
    );
  });

  it("refuses an answer that is neither yes nor no", () => {
    const options = { ...pixels, correct: "no" as never };
    expect(refusal(() => fromMarkup("mesh-478", inPixels, options)).message).toContain(
      'correct is "no"; needs true or false',
    );
  });

  test.prop([
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.double({ min: 0.3, max: 4, noNaN: true }),
  ])("turns and grows with the photo", (angle, times) => {
    const [cosine, sine] = [times * Math.cos(angle), times * Math.sin(angle)];
    const turned = ([x = 0, y = 0, z = 0]: readonly number[]): readonly number[] => [
      x * cosine - y * sine,
      x * sine + y * cosine,
      z * times,
    ];
    const face = fromMarkup("mesh-478", inPixels.map(turned), pixels);
    const expected = faceOfMesh(frontalMesh).left.brow?.upper.map((point) => turned([...point]));
    expectClose(face.left.brow?.upper, expected, 1e-6);
  });

  it("is the mirror image on the mirror image", () => {
    const flipped = inPixels.map(([x = 0, y = 0, z = 0]) => [image.width - x, y, z]);
    const mirrored = { ...pixels, image, mirrored: "coordinates" } as const;
    expectClose(
      places(fromMarkup("mesh-478", flipped, mirrored)),
      places(faceOfMesh(frontalMesh)),
      1e-9,
    );
  });
});
