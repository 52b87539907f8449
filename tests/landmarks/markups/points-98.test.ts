import { distance } from "brow-geometry/geometry";
import {
  type Face,
  faceFrame,
  fitMidline,
  fromMarkup,
  naturalDots,
  px,
  requireLandmarks,
  type Scale,
  toFace,
} from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { points98OfMesh } from "../../support/points98-of-mesh.js";
import { frontalPoints68, meshSamples } from "../../support/sample-faces.js";

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
  const face = fromMarkup("points-98", points, { coordinates: "pixels" });
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
    expect(() =>
      fromMarkup("points-98", frontalPoints68.landmarks, { coordinates: "pixels" }),
    ).toThrow("landmarks.length is 68; needs 98 points");
  });
});

describe("real faces as 98 points, taken from their meshes", () => {
  const faces = meshSamples.map((sample) => ({
    face: fromMarkup("points-98", points98OfMesh(sample), { coordinates: "pixels" }),
    mesh: fromMarkup("mesh-478", sample.landmarks, {
      coordinates: "normalised",
      correct: false,
      image: sample.image,
      alare: "wing-base",
    }),
  }));

  const flat = (point: readonly number[] | undefined): unknown => point?.slice(0, 2);

  it("have every landmark where the mesh has it", () => {
    for (const { face, mesh } of faces) {
      for (const side of ["right", "left"] as const) {
        for (const name of ["endocanthion", "exocanthion", "pupil", "alare", "cheilion"] as const) {
          expect(face[side][name]).toEqual(flat(mesh[side][name]));
        }
      }
      for (const name of [
        "sellion",
        "pronasale",
        "subnasale",
        "labialeSuperius",
        "menton",
      ] as const) {
        expect(face.midline[name]).toEqual(flat(mesh.midline[name]));
      }
      for (const name of ["stomionSuperius", "stomionInferius"] as const) {
        expect(face.midline[name]).toEqual(flat(mesh.midline[name]));
      }
    }
  });

  const width = (face: Face<"px">, name: "exocanthion" | "alare" | "pupil"): number =>
    distance(requireLandmarks(face.right, name)[name], requireLandmarks(face.left, name)[name]);

  /** The mesh as far as 98 points know it: flat, without the glabella, and no surer. */
  const asFarAsKnown = (mesh: Face<"px">, face: Face<"px">): Face<"px"> => {
    const { glabella: _, ...midline } = mesh.midline;
    const { symmetricPoints: __, ...rest } = mesh;
    const known = { ...rest, midline, ...(face.source && { source: face.source }) };
    return mapFace<"px", "px">(known, ([x, y]) => px([x, y]));
  };

  it("have the mesh's widths, and its midline as far as that does without the glabella", () => {
    for (const { face, mesh } of faces) {
      for (const name of ["exocanthion", "alare", "pupil"] as const) {
        expect(width(face, name)).toBeCloseTo(width(asFarAsKnown(mesh, face), name), 9);
      }
      const [one, other] = [fitMidline(face), fitMidline(asFarAsKnown(mesh, face))];
      expectClose(one.line, other.line, 1e-9);
    }
  });

  it("have the mesh's borders, starts and tail ends in millimetres", () => {
    for (const { face, mesh } of faces) {
      const scale: Scale = {
        from: "px",
        to: "mm",
        factor: 90 / width(face, "exocanthion"),
        u: 0,
        source: "given",
        notes: [],
      };
      const [one, other] = [face, asFarAsKnown(mesh, face)].map((each) =>
        toFace(each, faceFrame(each, scale)),
      );
      for (const side of ["right", "left"] as const) {
        const [brow, ofMesh] = [one?.[side].brow, other?.[side].brow];
        if (brow === undefined || ofMesh === undefined) return expect.fail("no brow");
        expectClose(brow.upper, ofMesh.upper, 1e-9);
        expectClose(brow.lower?.slice(0, 4), ofMesh.lower?.slice(0, 4), 1e-9);
        const { upperStart, tailEnd } = naturalDots(brow).dots;
        expectClose(upperStart, naturalDots(ofMesh).dots.upperStart, 1e-9);
        expectClose(tailEnd, naturalDots(ofMesh).dots.tailEnd, 1e-9);
      }
    }
  });
});
