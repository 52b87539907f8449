import { fc, test } from "@fast-check/vitest";
import { type FlatPoint, mm } from "brow-geometry";
import { polygonArea, sharedArea } from "brow-geometry/geometry";
import { flatPoint } from "brow-geometry/units";
import BufferOp from "jsts/org/locationtech/jts/operation/buffer/BufferOp.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import { describe, expect, it } from "vitest";
import { areaAround, isWithinPolygon } from "../../../src/geometry/internal.js";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { polygonOfJsts } from "../../support/polygons.js";

const square = mm([
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
]);

/** Corners round a middle, in the order of their angles: a polygon that does not cross itself. */
const anyStar = fc
  .tuple(
    anyBetween(-6, 6),
    anyBetween(-6, 6),
    fc.array(anyBetween(2, 10), { minLength: 3, maxLength: 9 }),
  )
  .map(([x, y, radii]): readonly FlatPoint<"mm">[] =>
    radii.map((radius, index) => {
      const angle = (2 * Math.PI * (index + 0.3)) / radii.length;
      return flatPoint<"mm">(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    }),
  );

describe("areaAround", () => {
  it("of a convex polygon is its area, its edge times the margin, and a disc", () => {
    expectClose(areaAround(square, mm(0)), 4, 1e-9);
    expectClose(areaAround(square, mm(1)), 4 + 8 + Math.PI, 2e-3);
    const half = mm([
      [1, -9],
      [9, -9],
      [9, 9],
      [1, 9],
    ]);
    expectClose(areaAround(square, mm(1), half), (4 + 8 + Math.PI) / 2, 2e-3);
  });

  it("counts once what two edges of a corner that turns in have about them", () => {
    const corner = mm([
      [0, 0],
      [4, 0],
      [4, 1],
      [1, 1],
      [1, 4],
      [0, 4],
    ]);
    // Five corners turn out by a right angle; at the sixth two strips share a square of the margin.
    expectClose(areaAround(corner, mm(0.5)), 7 + 16 / 2 + (5 / 4) * Math.PI * 0.25 - 0.25, 2e-3);
  });

  test.prop([anyStar, anyStar, anyBetween(0, 3)], { numRuns: 40 })(
    "agrees with JTS",
    (one, other, margin) => {
      const buffered = BufferOp.bufferOp(polygonOfJsts(one), margin, 64);
      const shared = OverlayOp.intersection(buffered, polygonOfJsts(other)).getArea();
      expectClose(areaAround(one, mm(margin)), buffered.getArea(), 0.1);
      expectClose(areaAround(one, mm(margin), other), shared, 0.1);
    },
  );

  test.prop([anyStar, anyStar])("of no margin is the area itself", (one, other) => {
    expectClose(areaAround(one, mm(0)), Math.abs(polygonArea(one)), 1e-6);
    expectClose(areaAround(one, mm(0), other), sharedArea(one, other), 0.05);
  });
});

describe("isWithinPolygon", () => {
  it("tells inside from outside", () => {
    expect(isWithinPolygon(mm([1, 1]), square)).toBe(true);
    expect(isWithinPolygon(mm([1, 3]), square)).toBe(false);
    expect(isWithinPolygon(mm([1, -1]), square)).toBe(false);
    expect(isWithinPolygon(mm([3, 1]), square)).toBe(false);
  });
});
