import { fc, test } from "@fast-check/vitest";
import { distance, pointAlong, polygonArea, polylineLength } from "brow-geometry/geometry";
import { mm, type Polyline, px } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { polygonArea as areaByD3 } from "d3-polygon";

const corner = mm([
  [0, 0],
  [3, 4],
  [3, 4],
  [3, 10],
]);
const twice = (polyline: Polyline<"mm">): Polyline<"mm"> =>
  polyline.flatMap((point) => [point, point]);

describe("polylineLength", () => {
  it("adds the segments, a point drawn twice adding nothing", () => {
    expectClose(polylineLength(corner), 11, 0);
    expectClose(polylineLength(mm([[1, 1]])), 0, 0);
    expectClose(polylineLength<"mm">([]), 0, 0);
  });

  test.prop([anyPolyline<"mm">()])("is at least the way from end to end", (polyline) => {
    const [first, last] = [polyline[0], polyline[polyline.length - 1]];
    if (first === undefined || last === undefined) return;
    expectClose(Math.min(0, polylineLength(polyline) - distance(first, last)), 0, 1e-9);
    expectClose(polylineLength(polyline), polylineLength([...polyline].reverse()), 1e-8);
  });
});

describe("pointAlong", () => {
  it("walks round corners", () => {
    expectClose(pointAlong(corner, mm(7)), { at: [3, 6], along: 7, extended: false }, 1e-12);
  });

  it("goes on along the tangent past either end, and says so", () => {
    expectClose(pointAlong(corner, mm(-5)), { at: [-3, -4], along: -5, extended: true }, 1e-12);
    expectClose(pointAlong(corner, mm(12)), { at: [3, 11], along: 12, extended: true }, 1e-12);
    expectClose(pointAlong(corner, mm(11)).extended, false, 0);
  });

  it("takes the tangent of the last segment that has a length", () => {
    expectClose(pointAlong(twice(corner), mm(12)).at, [3, 11], 1e-12);
    expectClose(pointAlong(twice(corner), mm(-5)).at, [-3, -4], 1e-12);
  });

  test.prop([anyPolyline<"mm">(), fc.double({ min: -0.5, max: 1.5, noNaN: true })])(
    "does not mind points drawn twice",
    (polyline, share) => {
      const along = mm(share * polylineLength(polyline));
      expectClose(pointAlong(twice(polyline), along), pointAlong(polyline, along), 1e-6);
    },
  );

  test.prop([anyPolyline<"mm">(), fc.double({ min: 0, max: 1, noNaN: true })])(
    "never goes straight farther than along",
    (polyline, share) => {
      const along = mm(share * polylineLength(polyline));
      const { at, extended } = pointAlong(polyline, along);
      expect(extended).toBe(false);
      expectClose(Math.max(0, distance(polyline[0] ?? at, at) - along), 0, 1e-8);
    },
  );

  it.each([
    ["one point", mm([[1, 2]]), "wrong-count"],
    [
      "one point twice",
      mm([
        [1, 2],
        [1, 2],
      ]),
      "coincident-points",
    ],
    [
      "NaN",
      mm([
        [1, 2],
        [Number.NaN, 2],
      ]),
      "not-finite",
    ],
  ])("refuses %s", (_, polyline, code) => {
    expect(refusal(() => pointAlong(polyline, mm(1))).code).toBe(code);
  });
});

describe("polygonArea", () => {
  it("is positive from the x axis towards the y axis", () => {
    expect(
      polygonArea(
        mm([
          [0, 0],
          [4, 0],
          [4, 3],
        ]),
      ),
    ).toBe(6);
    expect(
      polygonArea(
        px([
          [0, 0],
          [4, 3],
          [4, 0],
        ]),
      ),
    ).toBe(-6);
  });

  it("is nothing without three points", () => {
    expect(polygonArea<"mm">([])).toBe(0);
    expectClose(
      polygonArea(
        mm([
          [1, 2],
          [3, 4],
        ]),
      ),
      0,
      1e-12,
    );
  });

  test.prop([anyPolyline<"px">(4000)])("agrees with d3-polygon, whose y points down", (points) => {
    const pairs = points.map(([x, y]): [number, number] => [x, y]);
    expectClose(polygonArea(points), -areaByD3(pairs), 1e-6);
  });
});
