import { type Face, mm, px } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requireSideOrder } from "../../../src/landmarks/face/side-order.js";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const exchanged = <Kind extends Face<"px"> | Face<"mm">>(face: Kind): Kind => ({
  ...face,
  right: face.left,
  left: face.right,
});

describe("the order of sides", () => {
  it("holds on every picture of every face, however tilted, and not once sides are exchanged", () => {
    fc.assert(
      fc.property(anyFace(), anyPose(), fc.integer({ min: -180, max: 180 }), (face, pose, tilt) => {
        const photo = photograph(face, { ...pose, tilt });
        requireSideOrder(photo, "down");
        expect(
          refusal(() => {
            requireSideOrder(exchanged(photo), "down");
          }).code,
        ).toBe("sides-swapped");
        const flipped = mapFace<"px", "px">(photo, ([x, y]) => px([4000 - x, y]));
        expect(
          refusal(() => {
            requireSideOrder(flipped, "down");
          }).code,
        ).toBe("sides-swapped");
      }),
    );
  });

  it("is read by the eye corners alone where nothing lies below them, the head then being upright", () => {
    const eyes: Face<"px"> = {
      right: { exocanthion: px([100, 200]), endocanthion: px([160, 205]) },
      left: { endocanthion: px([230, 205]), exocanthion: px([290, 198]) },
      midline: {},
    };
    requireSideOrder(eyes, "down");
    expect(
      refusal(() => {
        requireSideOrder(exchanged(eyes), "down");
      }).message,
    ).toContain("the client's own right and left, y down");
  });

  it("notices corners of one eye that are exchanged", () => {
    const face = syntheticFace();
    const { endocanthion, exocanthion } = face.left;
    const mixed = {
      ...face,
      left: { ...face.left, endocanthion: exocanthion, exocanthion: endocanthion },
    };
    expect(
      refusal(() => {
        requireSideOrder(mixed, "up");
      }).code,
    ).toBe("sides-swapped");
    requireSideOrder(face, "up");
  });

  it("is not asked where a side has no eye", () => {
    requireSideOrder({ right: {}, left: { endocanthion: mm([-3, 0]) }, midline: {} }, "up");
  });
});
