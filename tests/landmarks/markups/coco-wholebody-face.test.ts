import { fromMarkup } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";
import { faceOfPoints68, frontalPoints68, points68Samples } from "../../support/sample-faces.js";

const triples = frontalPoints68.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 2]);
const pixels = { coordinates: "pixels" } as const;

describe("a face from COCO-WholeBody keypoints", () => {
  it("is that of the same 68 points, from the face's keypoints or from the whole person's", () => {
    const { source, ...expected } = faceOfPoints68(frontalPoints68);
    const body = Array.from({ length: 3 * 23 }, (_, index) => 7 * index);
    const hands = Array.from({ length: 3 * 42 }, (_, index) => index);
    for (const keypoints of [triples, [...body, ...triples, ...hands]]) {
      const { source: ofCoco, ...face } = fromMarkup("coco-wholebody-face", keypoints, pixels);
      expect(face).toEqual(expected);
      expect(ofCoco).toEqual({ ...source, markup: "coco-wholebody-face" });
    }
  });

  it("is the same to the last bit on every real face, padded to a whole person", () => {
    expect(points68Samples).toHaveLength(21);
    for (const sample of points68Samples) {
      const face = sample.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 1]);
      const person = [...zeros(23), ...face, ...zeros(42)];
      expect(person).toHaveLength(3 * 133);
      const { source: _, ...ofPerson } = fromMarkup("coco-wholebody-face", person, pixels);
      const { source: __, ...expected } = faceOfPoints68(sample);
      expect(ofPerson).toEqual(expected);
    }
  });

  it("misses a point at 0, 0 with visibility 0 (trap 6)", () => {
    const keypoints = triples.slice();
    keypoints.splice(3 * 48, 3, 0, 0, 0);
    const { right, notes } = fromMarkup("coco-wholebody-face", keypoints, pixels);
    expect(right.cheilion).toBeUndefined();
    expect(notes).toContainEqual({
      code: "point-missing",
      text: "right.cheilion is not complete: point 48 of the markup is missing.",
      values: { landmark: "right.cheilion", points: "48" },
    });
  });

  it("refuses another number of keypoints", () => {
    const error = refusal(() => fromMarkup("coco-wholebody-face", triples.slice(3), pixels));
    expect(error).toMatchObject({ code: "wrong-count", detail: { value: 201 } });
  });
});

/** Keypoints that nobody found. */
function zeros(count: number): readonly number[] {
  return Array.from({ length: 3 * count }, () => 0);
}
