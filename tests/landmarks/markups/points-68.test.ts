import { fromMarkup } from "brow-geometry";
import { type MarkupPoints } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import {
  AS_FOUND,
  faceOfPoints68,
  frontalPoints68,
  points68Samples,
} from "../../support/sample-faces.js";

const { landmarks, image } = frontalPoints68;
const face = faceOfPoints68(frontalPoints68, AS_FOUND);

describe("a face from 68 points", () => {
  it("is read from every real face of the fixtures", () => {
    expect(points68Samples).toHaveLength(21);
    for (const sample of points68Samples) {
      const { right, left } = faceOfPoints68(sample);
      expect(right.exocanthion?.[0]).toBeLessThan(left.exocanthion?.[0] ?? -1);
    }
  });

  it("has the brow of points 17–21 on the client's right, start to tail (trap 1)", () => {
    // face-api calls points 17–21 the left brow: the left of the picture.
    expect(face.right.brow?.upper).toEqual([21, 20, 19, 18, 17].map((index) => landmarks[index]));
    expect(face.left.brow?.upper).toEqual([22, 23, 24, 25, 26].map((index) => landmarks[index]));
    expect(face.right.brow?.upper[0]?.[0]).toBeLessThan(face.left.brow?.upper[0]?.[0] ?? -1);
    expect(face.right.brow?.lower).toBeUndefined();
  });

  it("puts the pupil at the centroid of the eye and says that it stands in", () => {
    const eye = landmarks.slice(36, 42);
    expectClose(
      face.right.pupil,
      [0, 1].map((axis) => eye.reduce((sum, point) => sum + (point[axis] ?? 0), 0) / 6),
      1e-9,
    );
    expect(face.standIns?.map(({ landmark }) => landmark)).toEqual([
      "alare",
      "pupil",
      "sellion",
      "pronasale",
      "subnasale",
      "menton",
      "brow",
    ]);
  });

  it("claims neither iris nor glabella nor depth", () => {
    expect(Object.keys(face.right)).not.toContain("limbusLateral");
    expect(face.midline.glabella).toBeUndefined();
    expect(face.source).toMatchObject({
      markup: "points-68",
      depth: "none",
      ringFactor: { value: 1, u: 0 },
      uncertainty: { default: 3.7 },
    });
    expect(face.symmetricPoints).toBeUndefined();
  });

  it("reads shares of the picture as it reads pixels", () => {
    const shares = landmarks.map(([x = 0, y = 0]) => [x / image.width, y / image.height]);
    const same = fromMarkup("points-68", shares, { coordinates: "normalised", image, ...AS_FOUND });
    expectClose([same.right, same.left], [face.right, face.left], 1e-9);
  });

  it("exchanges right and left where the detector saw the flipped frame (trap 5)", () => {
    const partner = (index: number): number => {
      if (index < 17) return 16 - index;
      if (index < 27) return 43 - index;
      if (index > 30 && index < 36) return 66 - index;
      if (index > 35 && index < 40) return 81 - index;
      if (index > 41 && index < 46) return 81 - index;
      if (index === 40 || index === 41 || index === 46 || index === 47) return 87 - index;
      if (index > 47 && index < 55) return 102 - index;
      if (index > 54 && index < 60) return 114 - index;
      if (index > 59 && index < 65) return 124 - index;
      return index > 64 ? 132 - index : index;
    };
    const seen = landmarks.map((_, index) => {
      const [x = 0, y = 0] = landmarks[partner(index)] ?? [];
      return [image.width - x, y];
    });
    const same = fromMarkup("points-68", seen, {
      coordinates: "pixels",
      image,
      mirrored: "frame",
      ...AS_FOUND,
    });
    expectClose([same.right, same.left, same.midline], [face.right, face.left, face.midline], 1e-9);
  });

  it.each([
    ["67 points", landmarks.slice(1), "wrong-count"],
    [
      "the picture turned over",
      landmarks.map(([x = 0, y = 0]) => [image.width - x, y]),
      "sides-swapped",
    ],
  ])("refuses %s", (_, points, code) => {
    expect(refusal(() => faceOfPoints68({ landmarks: points })).code).toBe(code);
  });
});

describe("trap 9: coarse annotation that repeats brow points", () => {
  const repeating = (indices: readonly (readonly [number, number])[]): MarkupPoints => {
    const points = landmarks.slice();
    for (const [index, from] of indices) points[index] = landmarks[from] ?? [];
    return points;
  };

  it("drops the repeats and says so", () => {
    const coarse = repeating([
      [20, 21],
      [18, 17],
    ]);
    const { right, notes } = faceOfPoints68({ landmarks: coarse }, AS_FOUND);
    expect(right.brow?.upper).toEqual([21, 19, 17].map((index) => landmarks[index]));
    expect(notes).toContainEqual({
      code: "repeated-points",
      values: { landmark: "right.brow.upper", count: 2 },
    });
  });

  it("has no brow where all of its points are one", () => {
    const { right, left } = faceOfPoints68({
      landmarks: repeating([
        [17, 21],
        [18, 21],
        [19, 21],
        [20, 21],
      ]),
    });
    expect(right.brow).toBeUndefined();
    expect(left.brow).toBeDefined();
  });
});
