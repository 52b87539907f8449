import { fc, test } from "@fast-check/vitest";
import {
  distanceFromPolyline,
  mm,
  type Polyline,
  px,
  separation,
  type Similarity,
  transform,
} from "brow-geometry";
import DiscreteHausdorffDistance from "jsts/org/locationtech/jts/algorithm/distance/DiscreteHausdorffDistance.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import { describe, expect, it } from "vitest";
import { anyAngle, anyFlatPoint, anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const factory = new GeometryFactory();

/** Hausdorff distance by JTS, through the npm package jsts, read at fractions of each segment. */
function byJts(one: Polyline<"px">, other: Polyline<"px">, fraction: number): number {
  const lineOf = (line: Polyline<"px">): ReturnType<typeof factory.createLineString> =>
    factory.createLineString(line.map(([x, y]) => new Coordinate(x, y)));
  return DiscreteHausdorffDistance.distance(lineOf(one), lineOf(other), fraction);
}

describe("separation", () => {
  // JTS, through the npm package jsts: 22.36 at the vertices alone, 47.89 densified.
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
    expectClose(separation(one, other, { step: px(0.01) }).greatest, 47.89, 0.005);
    expectClose(separation(one, other, { step: px(1000) }).greatest, 22.36, 0.005);
  });

  test.prop([anyPolyline<"px">(100), anyPolyline<"px">(100)])(
    "agrees with JTS on the greatest",
    (one, other) => {
      const { greatest } = separation(one, other);
      expectClose(greatest, byJts(one, other, 0.01), 3);
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
    expectClose(there.greatest / similarity.factor, greatest, 1e-3 * greatest + 1e-6);
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
