import { DOT_NAMES } from "../../src/landmarks/internal.js";
import {
  type Face,
  faceFrame,
  FACE_MIDLINE,
  mm,
  planDots,
  px,
  requirePlannable,
  type Scale,
  scaleFromIris,
  scaleFromReference,
  toFace,
} from "brow-geometry";
import { reflectAcross } from "brow-geometry/geometry";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { foundFace, londonFaces } from "../support/london-faces.js";
import { refusal } from "../support/refusal.js";
import {
  faceOfMesh,
  faceOfPoints68,
  meshSamples,
  points68Samples,
} from "../support/sample-faces.js";

const planned = (face: Face<"px">, scale = scaleFromIris(face)): ReturnType<typeof planDots> =>
  planDots(requirePlannable(toFace(face, faceFrame(face, scale))));

describe("every real face, turned and tilted ones too,", () => {
  it.each(meshSamples)("is planned from the mesh: photo $photo, face $face", (sample) => {
    const { dots } = planned(faceOfMesh(sample));
    for (const dot of DOT_NAMES) {
      expect(dots.left[dot].every(Number.isFinite)).toBe(true);
      expectClose(reflectAcross(dots.left[dot], FACE_MIDLINE), dots.right[dot], 1e-9);
    }
    // Between the inner eye corner and a hand's breadth, above the eyes.
    expect(dots.left.upperStart[0]).toBeGreaterThan(5);
    expect(dots.left.tailEnd[0]).toBeLessThan(90);
    expect(dots.left.lowerStart[1]).toBeGreaterThan(0);
  });

  it.each(points68Samples)("is planned from 68 points: photo $photo, face $face", (sample) => {
    const { dots, choices } = planned(
      faceOfPoints68(sample),
      scaleFromReference(px([0, 0]), px([100, 0]), mm(70)),
    );
    expect(DOT_NAMES.every((dot) => dots.right[dot].every(Number.isFinite))).toBe(true);
    // The outer points of the nostril row only stand for alare.
    expect(choices.start).toBe("endocanthion-vertical");
  });
});

describe("a plan of 102 real faces, by hand and as two detectors found them,", () => {
  const faces = londonFaces().flatMap((found) => {
    const { hand, millimetres: factor } = found;
    const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
    return [hand, foundFace(found, "mesh-478"), foundFace(found, "points-68")].map((photo) =>
      requirePlannable(toFace(photo, faceFrame(photo, scale))),
    );
  });
  const anyConflict = fc.record({
    lead: fc.constantFrom("right", "left", "middle"),
    levels: fc.constantFrom("right", "left", "middle", "higher"),
    arch: fc.constantFrom("natural", "brow-length-share"),
    tailHeight: fc.constantFrom("natural", "level-with-lower-start", "level-with-upper-start"),
  });

  test.prop([fc.constantFrom(...faces), anyConflict], { numRuns: 200 })(
    "settles what one brow lets be and the other does not, and is refused over the eye alone",
    (face, choices) => {
      const isPlanned = (): boolean => {
        try {
          return planDots(face, choices).dots.left.tailEnd.every(Number.isFinite);
        } catch {
          return false;
        }
      };
      if (isPlanned()) return;
      expect(refusal(() => planDots(face, choices)).detail.field).toMatch(
        /^space over the .* lid$/,
      );
    },
  );
});
