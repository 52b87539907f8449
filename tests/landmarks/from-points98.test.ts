import { fromPoints98 } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { frontalPoints68 } from "../support/sample-faces.js";

const [pupilR, pupilL] = [
  [40, 30],
  [80, 30],
];

// An invented face in which every point tells its number: 98 points about two eyes.
const points = Array.from({ length: 98 }, (_, index): readonly number[] => {
  if (index <= 32) return [10 + index * 3, 60 + 40 * Math.sin((Math.PI * index) / 32)];
  if (index <= 37) return [24 + (index - 33) * 6, 15];
  if (index <= 41) return [48 - (index - 38) * 6, 19];
  if (index <= 46) return [72 + (index - 42) * 6, 15];
  if (index <= 50) return [90 - (index - 47) * 6, 19];
  if (index <= 54) return [60, 25 + (index - 51) * 8];
  if (index <= 59) return [50 + (index - 55) * 5, 55];
  if (index <= 64) return [30 + (index - 60) * 5, 28];
  if (index <= 67) return [45 - (index - 65) * 5, 33];
  if (index <= 72) return [70 + (index - 68) * 5, 28];
  if (index <= 75) return [85 - (index - 73) * 5, 33];
  if (index <= 82) return [45 + (index - 76) * 5, 72];
  if (index <= 87) return [70 - (index - 83) * 5, 80];
  if (index <= 92) return [50 + (index - 88) * 5, 74];
  if (index <= 95) return [65 - (index - 93) * 5, 78];
  return index === 96 ? pupilR : pupilL;
});

describe("a face from 98 points", () => {
  const face = fromPoints98(points, { coordinates: "pixels" });
  const at = (...indices: readonly number[]): unknown => indices.map((index) => points[index]);

  it("has both borders of the brow, from the start to the tail's tip", () => {
    expect(face.right.brow).toEqual({
      upper: at(37, 36, 35, 34, 33),
      lower: at(38, 39, 40, 41, 33),
    });
    expect(face.left.brow).toEqual({
      upper: at(42, 43, 44, 45, 46),
      lower: at(50, 49, 48, 47, 46),
    });
  });

  it("has the eyes' corners, lids and pupils", () => {
    expect([face.right.exocanthion, face.right.endocanthion]).toEqual(at(60, 64));
    expect([face.left.endocanthion, face.left.exocanthion]).toEqual(at(68, 72));
    expect([face.right.pupil, face.left.pupil]).toEqual([pupilR, pupilL]);
    expect(face.right.upperLid).toEqual(at(64, 63, 62, 61, 60));
    expect(face.left.lowerLid).toEqual(at(68, 75, 74, 73, 72));
  });

  it("has nose, mouth and chin, and names what stands in", () => {
    expect([face.right.alare, face.left.alare]).toEqual(at(55, 59));
    expect([face.right.cheilion, face.left.cheilion]).toEqual(at(76, 82));
    expect(face.midline).toEqual({
      sellion: points[51],
      pronasale: points[54],
      subnasale: points[57],
      labialeSuperius: points[79],
      stomion: [60, 76],
      stomionSuperius: points[90],
      stomionInferius: points[94],
      menton: points[16],
    });
    expect(face.standIns?.map(({ landmark }) => landmark)).toEqual([
      "alare",
      "sellion",
      "pronasale",
      "subnasale",
      "menton",
    ]);
  });

  it("are not 68", () => {
    expect(() => fromPoints98(frontalPoints68.landmarks, { coordinates: "pixels" })).toThrow(
      "landmarks.length is 68; needs 98 points",
    );
  });
});
