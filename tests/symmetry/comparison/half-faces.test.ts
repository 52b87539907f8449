import { fc, test } from "@fast-check/vitest";
import {
  type Face,
  FACE_MIDLINE,
  halfFaces,
  mirror,
  mm,
  type Point,
  requireLandmarks,
  say,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";
import { turnedHead } from "../../support/synthetic-head.js";

/** A face whose outer corners lie as deep behind glabella and sellion as on the canonical mesh. */
function faceInDepth(): Face<"mm"> {
  const face = syntheticFace();
  const { glabella, sellion } = face.midline;
  return {
    ...face,
    midline: {
      ...face.midline,
      glabella: mm([glabella[0], glabella[1], 0.249 * 87.8]),
      sellion: mm([sellion[0], sellion[1], 0.233 * 87.8]),
    },
  };
}

const seen = (face: Face<"mm">): Parameters<typeof halfFaces>[0] => {
  const { right, left, ...rest } = mapFace(face, (point: Point<"mm">) =>
    flatPoint(point[0], point[1]),
  );
  return {
    ...rest,
    right: requireLandmarks(right, "exocanthion"),
    left: requireLandmarks(left, "exocanthion"),
  };
};

describe("halfFaces", () => {
  it("of a symmetric face are equally wide, and nothing is noted", () => {
    expect(halfFaces(syntheticFace())).toMatchObject({
      difference: { value: 0 },
      yaw: { value: 0 },
    });
    expect(halfFaces(syntheticFace()).note).toBeUndefined();
  });

  test.prop([fc.double({ min: -15, max: 15, noNaN: true })])(
    "tell the yaw of a symmetric head of the usual depth",
    (yaw) => {
      expectClose(halfFaces(seen(turnedHead(faceInDepth(), yaw))).yaw.value, yaw, 1e-6);
    },
  );

  it("know the yaw as well as the difference tells it", () => {
    const { difference, yaw } = halfFaces(syntheticFace());
    const least = 1e-4;
    const moved = halfFaces({
      ...syntheticFace(),
      midline: { sellion: mm([least, 2]), glabella: mm([least, 16]) },
    });
    const slope = (moved.yaw.value - yaw.value) / (moved.difference.value - difference.value);
    expectClose(yaw.u, Math.abs(slope) * difference.u, 1e-6);
  });

  it("say what else it may be", () => {
    const { note } = halfFaces(seen(turnedHead(faceInDepth(), 4)));
    expect(note && say(note)).toBe(
      "The halves of the face differ by 3.0 mm in width: the head is turned by about 4°, or the face is that uneven. The photo cannot tell, and no dot is moved for it.",
    );
  });

  test.prop([anyFace()])("of the mirrored face change places", (face) => {
    const { right, left, difference, yaw } = halfFaces(face);
    const mirrored = halfFaces(mirror(face, FACE_MIDLINE) as SyntheticFace);
    expectClose([mirrored.right, mirrored.left], [left, right], 1e-9);
    expectClose(mirrored.difference, { value: -difference.value, u: difference.u }, 1e-9);
    expectClose(mirrored.yaw, { value: -yaw.value, u: yaw.u }, 1e-9);
  });

  it("know that the middle enters both widths", () => {
    // Placed by hand, 0.26 mm each: two corners, and twice the mean of glabella and sellion.
    const { difference, right } = halfFaces(syntheticFace());
    expectClose(difference.u, Math.hypot(0.26, 0.26, 2 * (0.26 / Math.SQRT2)), 1e-12);
    expectClose(right.u, Math.hypot(0.26, 0.26 / Math.SQRT2), 1e-12);
  });

  it("need glabella or sellion", () => {
    const { right, left } = syntheticFace();
    expect(refusal(() => halfFaces({ right, left, midline: {} })).code).toBe("missing-landmark");
    const some = halfFaces({ right, left, midline: { sellion: mm([1, 2]) } });
    expectClose(some.difference.value, -2, 1e-12);
  });
});
