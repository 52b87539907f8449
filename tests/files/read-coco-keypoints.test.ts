import { fromMarkup } from "brow-geometry";
import { readCocoKeypoints } from "brow-geometry/files";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { frontalPoints68 } from "../support/sample-faces.js";

const face = frontalPoints68.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 2]);
const person = [
  ...Array.from({ length: 23 * 3 }, (_, index) => index),
  ...face,
  ...Array.from({ length: 42 * 3 }, () => 0),
];
const images = [{ id: 3, file_name: "anna.png", width: 640, height: 480 }];

describe("a COCO keypoints file", () => {
  it("gives the 68 points of the face, from face_kpts or out of a whole body", () => {
    const expected = [{ id: "11", points: frontalPoints68.landmarks, image: "anna.png" }];
    for (const keypoints of [{ face_kpts: face, keypoints: [1, 2, 2] }, { keypoints: person }]) {
      const annotations = [{ id: 11, image_id: 3, ...keypoints }];
      const sets = readCocoKeypoints(JSON.stringify({ images, annotations }));
      expect(sets).toEqual(expected);
      expect(
        fromMarkup("points-68", sets[0]?.points ?? [], { coordinates: "pixels" }).right.brow,
      ).toBeDefined();
    }
  });

  it("may be a list of results, named by their pictures", () => {
    const results = [{ image_id: 3, keypoints: person, score: 0.9 }];
    expect(readCocoKeypoints(JSON.stringify(results))[0]?.id).toBe("3");
    expect(readCocoKeypoints(JSON.stringify(results), { part: "all" })[0]?.points).toHaveLength(
      133,
    );
  });

  it("misses a point at 0, 0 with visibility 0 only (trap 6)", () => {
    const results = [{ id: "a", keypoints: [0, 0, 0, 0, 0, 1, 5, 0, 0] }];
    expect(readCocoKeypoints(JSON.stringify(results), { part: "all" })[0]?.points).toEqual([
      null,
      [0, 0],
      [5, 0],
    ]);
  });

  it.each([
    ["cut off", '{"annotations": [', "line 1, column 18 is missing; needs JSON"],
    ["no annotations", "{}", "(annotations) is missing; needs a list"],
    ["a number", "5", "line 1, column 1 is 5; needs an object"],
    [
      "an annotation that is none",
      '[\n{"id":1,"face_kpts":[]},\n  7]',
      "line 3, column 3 ([1]) is 7",
    ],
    ["no name", '[{"keypoints":[]}]', "line 1, column 2 ([0].image_id) is missing"],
    [
      "a keypoint that is no number",
      '{"annotations":[{"id":1,\n"face_kpts":[1,"2",3]}]}',
      'line 2, column 16 (annotations[0].face_kpts[1]) is "2"',
    ],
    ["half a keypoint", '[{"id":1,"face_kpts":[1,2]}]', "needs three numbers a point"],
    [
      "keypoints of another body",
      '[{"id":1,"keypoints":[1,2,2]}]',
      'is "1 points"; needs 133 points, or face_kpts',
    ],
    [
      "a picture without a name",
      '{"images":[{"id":1}],"annotations":[]}',
      "(images[0].file_name) is missing",
    ],
  ])("is refused with %s", (_, text, message) => {
    const error = refusal(() => readCocoKeypoints(text));
    expect(error.code).toBe("not-parsed");
    expect(error.message).toContain(message);
  });
});
