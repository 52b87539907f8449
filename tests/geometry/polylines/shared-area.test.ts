import { fc, test } from "@fast-check/vitest";
import { type FlatPoint, mm, type Polyline } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { polygonArea, sharedArea } from "brow-geometry/geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

/** A polygon that does not cross itself: corners round a middle, in the order of their angles. */
const anyStar = fc
  .tuple(
    anyBetween(-6, 6),
    anyBetween(-6, 6),
    fc.array(anyBetween(2, 10), { minLength: 3, maxLength: 12 }),
    fc.boolean(),
  )
  .map(([x, y, radii, back]): readonly FlatPoint<"mm">[] => {
    const corners = radii.map((radius, index) => {
      const angle = (2 * Math.PI * (index + 0.3)) / radii.length;
      return flatPoint<"mm">(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    });
    return back ? corners.reverse() : corners;
  });

function byJts(polygon: Polyline<"mm">): Geometry {
  const ring = [...polygon, ...polygon.slice(0, 1)].map(([x, y]) => new Coordinate(x, y));
  return new GeometryFactory().createPolygon(ring);
}

const one = mm([
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
]);

describe("sharedArea", () => {
  it("of two squares is a seventh of what both cover", () => {
    const other = mm([
      [1, 1],
      [3, 1],
      [3, 3],
      [1, 3],
    ]);
    const shared = sharedArea(one, other);
    expect(shared / (4 + 4 - shared)).toBe(1 / 7);
  });

  it("of a polygon with itself is its area, whichever way it is run through", () => {
    expect(sharedArea(one, one)).toBe(4);
    expect(sharedArea(one, [...one].reverse())).toBe(4);
  });

  it("of polygons that touch or lie apart is nothing", () => {
    expect(
      sharedArea(
        one,
        mm([
          [2, 0],
          [4, 0],
          [4, 2],
        ]),
      ),
    ).toBe(0);
    expect(
      sharedArea(
        one,
        mm([
          [5, 0],
          [7, 0],
          [7, 2],
        ]),
      ),
    ).toBe(0);
    expect(sharedArea(one, [])).toBe(0);
  });

  it("leaves out what a polygon covers twice", () => {
    const bow = mm([
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ]);
    expectClose(sharedArea(bow, one), 2, 1e-12);
  });

  test.prop([anyStar, anyStar])("agrees with the overlay of JTS", (first, second) => {
    const overlay = OverlayOp.intersection(byJts(first), byJts(second)).getArea();
    expectClose(sharedArea(first, second), overlay, 1e-7);
  });

  test.prop([anyStar, anyStar])(
    "is the same both ways and at most either area",
    (first, second) => {
      const shared = sharedArea(first, second);
      expectClose(sharedArea(second, first), shared, 1e-9);
      expect(shared).toBeLessThanOrEqual(
        Math.min(...[first, second].map((polygon) => Math.abs(polygonArea(polygon)))) + 1e-9,
      );
    },
  );
});
