import { fc, test } from "@fast-check/vitest";
import { type Brow, FACE_MIDLINE, mirror, mm, type Polyline } from "brow-geometry";
import { polylineLength } from "brow-geometry/geometry";
import { compareBorders } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** Borders of a left brow, up to 3 mm from the synthetic one's. */
const anyBrow: fc.Arbitrary<Brow<"mm">> = fc
  .array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 14, maxLength: 14 })
  .map((shifts) => {
    const { upper, lower } = syntheticFace().left.brow;
    const moved = (border: Polyline<"mm">, from: number): Polyline<"mm"> =>
      border.map(([x, y], index) => mm([x, y + (shifts[from + index] ?? 0)]));
    return { upper: moved(upper, 0), lower: moved(lower, 7) };
  });

describe("compareBorders", () => {
  test.prop([anyBrow])("of mirrored brows finds nothing", (left) => {
    const { upper, lower } = compareBorders({ right: mirror(left, FACE_MIDLINE), left });
    expectClose([upper, lower], Array(2).fill({ mean: 0, greatest: 0, area: 0 }), 1e-9);
  });

  test.prop([anyBrow, anyBrow])("does not mind which side is which", (one, other) => {
    const straight = compareBorders({ right: mirror(one, FACE_MIDLINE), left: other });
    const exchanged = compareBorders({ right: mirror(other, FACE_MIDLINE), left: one });
    expectClose(exchanged, straight, 1e-9);
    expect(straight.upper.mean).toBeLessThanOrEqual(straight.upper.greatest + 1e-12);
  });

  test.prop([anyBrow, fc.double({ min: 0.1, max: 4, noNaN: true })])(
    "of a brow that is only higher finds no more than the height",
    (left, up) => {
      const higher = { upper: left.upper.map(([x, y]) => mm([-x, y + up])) };
      const { upper, lower } = compareBorders({ right: higher, left });
      expect(lower).toBeUndefined();
      expect(upper.greatest).toBeLessThanOrEqual(up + 1e-9);
      const width = (left.upper[6]?.[0] ?? 0) - (left.upper[0]?.[0] ?? 0);
      expectClose(upper.area, up * width, 1e-9);
      expect(upper.mean * polylineLength(left.upper)).toBeGreaterThan(0);
    },
  );

  it("reads between the points of coarse borders", () => {
    const left = {
      upper: mm([
        [15, 20],
        [57, 18],
      ]),
    };
    const right = {
      upper: mm([
        [-15, 20],
        [-38, 26],
        [-57, 18],
      ]),
    };
    const { greatest, area } = compareBorders({ right, left }).upper;
    // Height of the triangle over its base, and its area.
    const base = Math.hypot(42, 2);
    const twice = Math.abs(42 * 6 - 23 * -2);
    expectClose(greatest, twice / base, 1e-9);
    expectClose(area, twice / 2, 1e-9);
  });
});
