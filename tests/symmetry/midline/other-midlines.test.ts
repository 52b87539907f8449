import { fitMidline, mm } from "brow-geometry";
import { otherMidlines } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { syntheticFace } from "../../support/synthetic-face.js";

describe("otherMidlines", () => {
  const face = syntheticFace();
  // The left inner corner 2 mm up: the perpendicular turns by atan(2 / 31.8), the chin end left.
  const uneven = { ...face, left: { ...face.left, endocanthion: mm([15.9, 2]) } };

  it("says what the other methods say", () => {
    const others = otherMidlines(uneven, fitMidline(uneven));
    expect(others.map(({ method }) => method)).toEqual(["endocanthia", "midpoints"]);
    expectClose(others[0]?.tilt, (Math.atan(2 / 31.8) * 180) / Math.PI, 1e-9);
    expect(fitMidline(uneven, { method: "midpoints" }).tilt).toBe(others[1]?.tilt);
  });

  it("leaves out a method that the face has no answer for", () => {
    const { right, left, midline } = face;
    const without = {
      right: { exocanthion: right.exocanthion },
      left: { exocanthion: left.exocanthion },
      midline,
    };
    const given = [mm([0, 40]), mm([0, -40])] as const;
    expect(otherMidlines(without, fitMidline(without, { given }))).toEqual([]);
  });

  it("says how far they lie to the client's left", () => {
    const given = [mm([-1, 40]), mm([-1, -40])] as const;
    const [mirror] = otherMidlines(face, fitMidline(face, { given }));
    expect(mirror?.method).toBe("mirror");
    expectClose(mirror?.offset, 1, 1e-9);
  });
});
