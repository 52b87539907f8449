import { fc, test } from "@fast-check/vitest";
import {
  distance,
  distanceFromPolyline,
  separation,
  type Similarity,
  transform,
} from "brow-geometry/geometry";
import { mm, type Polyline, px } from "brow-geometry";
import DiscreteHausdorffDistance from "jsts/org/locationtech/jts/algorithm/distance/DiscreteHausdorffDistance.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import { describe, expect, it } from "vitest";
import { anyAngle, anyFlatPoint, anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const factory = new GeometryFactory();

/** Each segment in so many pieces, for JTS. */
const PIECES = 100;

/** Hausdorff distance by JTS, through the npm package jsts, read at the ends of the pieces. */
function byJts(one: Polyline<"px">, other: Polyline<"px">, pieces = PIECES): number {
  const lineOf = (line: Polyline<"px">): ReturnType<typeof factory.createLineString> =>
    factory.createLineString(line.map(([x, y]) => new Coordinate(x, y)));
  return DiscreteHausdorffDistance.distance(lineOf(one), lineOf(other), 1 / pieces);
}

/** By how much JTS may fall short: no point is farther than half a piece from one that it reads. */
function shortfallOfJts(...lines: readonly Polyline<"px">[]): number {
  const segments = lines.flatMap((line) =>
    line.slice(1).map((to, index) => distance(line[index] as typeof to, to)),
  );
  return Math.max(...segments) / PIECES / 2;
}

const CROOKED: Polyline<"px"> = px([
  [-0.2, 42.8],
  [88.9, 48],
  [-16, 55],
  [58, -90.9],
  [65.5, 35.1],
  [32.6, 28.4],
  [-1.4, -4.7],
  [54.9, 78.9],
  [-49.5, 75.7],
  [-68.4, -77.4],
  [-54, 72.6],
]);
const ALSO_CROOKED: Polyline<"px"> = px([
  [-54.1, -74.2],
  [-66.4, 10.4],
  [63.9, 90.4],
  [-76.7, 2.9],
  [-27.7, -98.7],
  [-4.7, 94.7],
  [-56, 56.2],
  [69.7, -33.1],
  [6.2, 47.3],
  [94.4, -86.3],
  [-97.7, -55.8],
  [-46, 41.1],
]);

describe("separation", () => {
  // JTS's documentation of DiscreteHausdorffDistance: 22.36 at the vertices alone, 47.89 in truth.
  it("reads between the points: JTS's example", () => {
    const one = px([
      [0, 0],
      [100, 0],
      [10, 100],
      [10, 100],
    ]);
    const other = px([
      [0, 100],
      [0, 10],
      [80, 10],
    ]);
    expectClose(separation(one, other).greatest, 47.89, 0.005);
    expectClose(separation(one, other, { step: px(1000) }).greatest, 47.89, 0.005);
    expectClose(byJts(one, other, 1), 22.36, 0.005);
  });

  it("finds a farthest point that dense reading misses by 3", () => {
    // 53.7314 by NumPy, at the nearest of two million points a segment.
    expectClose(separation(CROOKED, ALSO_CROOKED).greatest, 53.7314, 5e-5);
  });

  test.prop([anyPolyline<"px">(100), anyPolyline<"px">(100)])(
    "is at least what JTS reads, and more by what its pieces may miss at most",
    (one, other) => {
      const { greatest } = separation(one, other);
      const read = byJts(one, other);
      expect(greatest).toBeGreaterThanOrEqual(read - 1e-9);
      expect(greatest).toBeLessThanOrEqual(read + shortfallOfJts(one, other) + 1e-9);
    },
  );

  test.prop([anyPolyline<"px">(), anyPolyline<"px">()])(
    "is the same both ways and either way along",
    (one, other) => {
      const apart = separation(one, other);
      expectClose(separation(other, one), apart, 1e-9 * apart.greatest + 1e-9);
      expectClose(separation([...one].reverse(), other), apart, 1e-9 * apart.greatest + 1e-9);
      expect(apart.mean).toBeLessThanOrEqual(apart.greatest + 1e-9);
    },
  );

  test.prop([anyPolyline<"px">()])("of a line from itself is nothing", (line) => {
    expectClose(separation(line, line), { mean: 0, greatest: 0 }, 1e-9);
  });

  test.prop([
    anyPolyline<"px">(),
    anyPolyline<"px">(),
    fc.record<Similarity<"px", "mm">>({
      rotation: anyAngle(),
      factor: fc.double({ min: 0.05, max: 5, noNaN: true }),
      from: anyFlatPoint<"px">(),
      to: anyFlatPoint<"mm">(),
    }),
  ])("grows with the picture and does not mind its turn", (one, other, similarity) => {
    const moved = (line: Polyline<"px">): Polyline<"mm"> =>
      line.map((point) => transform(point, similarity));
    const { mean, greatest } = separation(one, other);
    const there = separation(moved(one), moved(other));
    expectClose(there.mean / similarity.factor, mean, 1e-3 * greatest + 1e-6);
    expectClose(there.greatest / similarity.factor, greatest, 1e-6);
  });

  test.prop([anyFlatPoint<"px">(), anyPolyline<"px">()])(
    "is no less than the distance of any point of the line",
    (point, line) => {
      const nearest = distanceFromPolyline(point, line);
      for (const [x, y] of line) {
        expect(nearest).toBeLessThanOrEqual(Math.hypot(x - point[0], y - point[1]) + 1e-9);
      }
    },
  );

  it("of parallel lines is their distance", () => {
    const apart = separation(
      mm([
        [0, 0],
        [50, 0],
      ]),
      mm([
        [0, 1.5],
        [50, 1.5],
      ]),
    );
    expectClose(apart, { mean: 1.5, greatest: 1.5 }, 1e-12);
  });
});
