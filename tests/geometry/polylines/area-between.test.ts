import { fc, test } from "@fast-check/vitest";
import { areaBetween } from "brow-geometry/geometry";
import { mm, type Polyline } from "brow-geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

/** Borders over the same 50 mm that may cross as often as they like. */
const anyBorder: fc.Arbitrary<Polyline<"mm">> = fc
  .array(fc.integer({ min: 0, max: 2000 }), { minLength: 2, maxLength: 9 })
  .map((heights) => heights.map((y, index) => mm([(50 * index) / (heights.length - 1), y / 100])));

/** What lies under exactly one of the two, by JTS, through the npm package jsts. */
function byJts(one: Polyline<"mm">, other: Polyline<"mm">): number {
  const factory = new GeometryFactory();
  const under = (border: Polyline<"mm">): Geometry =>
    factory.createPolygon(
      [[0, -100], ...border, [50, -100], [0, -100]].map(([x = 0, y = 0]) => new Coordinate(x, y)),
    );
  return OverlayOp.symDifference(under(one), under(other)).getArea();
}

describe("areaBetween", () => {
  it.each([
    [
      "apart",
      [
        [0, 0],
        [40, 0],
      ],
      [
        [0, 2],
        [40, 2],
      ],
      80,
    ],
    [
      "crossing once",
      [
        [0, 0],
        [40, 0],
      ],
      [
        [0, 2],
        [40, -2],
      ],
      40,
    ],
    [
      "of other lengths, ends joined",
      [
        [0, 0],
        [40, 0],
      ],
      [
        [0, 2],
        [20, 2],
      ],
      60,
    ],
    [
      "touching in the middle",
      [
        [0, 0],
        [40, 0],
      ],
      [
        [0, 2],
        [20, 0],
        [40, 2],
      ],
      40,
    ],
    [
      "the same",
      [
        [0, 0],
        [20, 5],
        [40, 0],
      ],
      [
        [0, 0],
        [20, 5],
        [40, 0],
      ],
      0,
    ],
  ] as const)("of lines %s", (_, one, other, area) => {
    expectClose(areaBetween(mm(one), mm(other)), area, 1e-12);
  });

  test.prop([anyBorder, anyBorder])("agrees with JTS", (one, other) => {
    expectClose(areaBetween(one, other), byJts(one, other), 1e-6);
  });

  test.prop([anyBorder, anyBorder])(
    "is the same both ways, and along both lines reversed",
    (one, other) => {
      const area = areaBetween(one, other);
      expectClose(areaBetween(other, one), area, 1e-9);
      expectClose(areaBetween([...one].reverse(), [...other].reverse()), area, 1e-9);
      expect(area).toBeGreaterThanOrEqual(0);
    },
  );
});
