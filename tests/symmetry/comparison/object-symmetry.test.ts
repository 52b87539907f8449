import { test } from "@fast-check/vitest";
import { FACE_MIDLINE, mirror, type Point, type Unit } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { objectSymmetry } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { anyFace, anyLine, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const apart = <U extends Unit>(one: Point<U> | undefined, other: Point<U> | undefined): number =>
  one === undefined || other === undefined
    ? Number.NaN
    : Math.hypot(one[0] - other[0], one[1] - other[1]);

// Object symmetry: Klingenberg, Barluenga & Meyer, Evolution 2002;56:1909–1920.
describe("objectSymmetry", () => {
  test.prop([anyFace(4), anyLine<"mm">(20)])(
    "takes squares apart into two parts that add up, about any line",
    (face, line) => {
      const { squares } = objectSymmetry(face, line);
      expectClose(squares.symmetric + squares.asymmetric, squares.total, 1e-8 * squares.total);
    },
  );

  test.prop([anyFace(4)])("finds partners equally far off their symmetric places", (face) => {
    const { symmetric, asymmetric } = objectSymmetry(face);
    for (const name of ["endocanthion", "exocanthion", "pupil", "alare", "cheilion"] as const) {
      const right = apart(face.right[name], symmetric.right[name]);
      expectClose(right, apart(face.left[name], symmetric.left[name]), 1e-9);
      expectClose(asymmetric[name], right, 1e-9);
    }
  });

  test.prop([anyFace(4)])("has a symmetric part that is its own mirror image", (face) => {
    const { symmetric, line } = objectSymmetry(face);
    expectClose(mirror(symmetric, line), symmetric, 1e-8);
    // What is symmetric already is left alone.
    const again = objectSymmetry(symmetric, line);
    expectClose(again.squares.asymmetric, 0, 1e-12);
    expectClose(again.symmetric, symmetric, 1e-8);
  });

  test.prop([anyFace(4), anyPose()])("grows with the picture", (face, pose) => {
    const onFace = objectSymmetry(face).squares;
    const onPhoto = objectSymmetry(photograph(face, pose)).squares;
    expectClose(onPhoto.total * pose.factor ** 2, onFace.total, 1e-6 * onFace.total);
    expectClose(onPhoto.asymmetric * pose.factor ** 2, onFace.asymmetric, 1e-5 * onFace.total);
  });

  it("finds nothing asymmetric in a symmetric face", () => {
    const { asymmetric, squares } = objectSymmetry(syntheticFace());
    expectClose(squares.asymmetric, 0, 1e-20);
    expectClose(
      Object.values(asymmetric),
      Object.values(asymmetric).map(() => 0),
      1e-10,
    );
  });

  it("leaves out what has no partner", () => {
    const face = syntheticFace();
    const { pupil: _, ...right } = face.right;
    const { symmetric, asymmetric } = objectSymmetry({ ...face, right }, FACE_MIDLINE);
    expect(symmetric.left.pupil).toBeUndefined();
    expect(asymmetric.pupil).toBeUndefined();
    expect(symmetric.left.endocanthion).toEqual(flatPoint(15.9, 0));
  });
});
