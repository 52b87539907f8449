import { type Face, mm } from "brow-geometry";
import { landmarkUncertainty } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import {
  AS_FOUND,
  faceOfMesh,
  faceOfPoints68,
  frontalMesh,
  frontalPoints68,
} from "../../support/sample-faces.js";

describe("the uncertainty of a landmark", () => {
  it("is what its source states, the landmark's own before the usual one", () => {
    const mesh = faceOfMesh(frontalMesh, AS_FOUND);
    expect(landmarkUncertainty(mesh, "endocanthion")).toBe(1.3);
    expect(landmarkUncertainty(mesh, "pupil")).toBe(0.5);
    expect(landmarkUncertainty(faceOfPoints68(frontalPoints68, AS_FOUND), "pupil")).toBe(3.7);
  });

  // Reliability of Periocular Anthropometry, 2019, 46 adults: same rater 0.26 mm.
  it("is 0.26 mm where the face was placed by hand", () => {
    const face: Face<"mm"> = { right: { pupil: mm([-31, 0]) }, left: {}, midline: {} };
    expect(landmarkUncertainty(face, "pupil")).toBe(0.26);
  });
});
