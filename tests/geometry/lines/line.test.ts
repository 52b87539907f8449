import { fc, test } from "@fast-check/vitest";
import {
  distance,
  distanceAlongLine,
  distanceFromLine,
  intersect,
  type Line,
  lineAlong,
  lineThrough,
  pointOnLine,
  reflectAcross,
} from "brow-geometry/geometry";
import { mm, px } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyDeepPoint, anyFlatPoint, anyLine } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import AffineTransformation from "jsts/org/locationtech/jts/geom/util/AffineTransformation.js";
import Intersection from "jsts/org/locationtech/jts/algorithm/Intersection.js";

const level = lineThrough(mm([0, 2]), mm([10, 2]));

describe("lineThrough", () => {
  it("runs from the first point towards the second, without depth", () => {
    expectClose(lineThrough(mm([0, 0]), mm([30, 40])).direction, [0.6, 0.8], 1e-15);
    expectClose(lineThrough(mm([1, 2, 9]), mm([1, 5, 0])).through, [1, 2], 0);
  });

  it("refuses one point twice", () => {
    const { code, detail } = refusal(() => lineThrough(mm([1, 2]), mm([1, 2, 5])));
    expect(code).toBe("coincident-points");
    expect(detail.field).toBe("to");
  });
});

describe("lineAlong", () => {
  it("makes any direction one of length 1", () => {
    expectClose(lineAlong(mm([0, 0]), [0, -7]).direction, [0, -1], 0);
  });

  it.each([
    [0, 0],
    [Number.NaN, 1],
    [Number.POSITIVE_INFINITY, 0],
  ] as const)("refuses the direction [%d, %d]", (x, y) => {
    expect(refusal(() => lineAlong(mm([0, 0]), [x, y])).code).toBe("out-of-range");
  });
});

describe("distances of a point and a line", () => {
  it("have the sign of the axes", () => {
    expectClose(distanceFromLine(mm([5, 7]), level), 5, 0);
    expectClose(distanceFromLine(mm([5, -7]), level), -9, 0);
    expectClose(distanceAlongLine(mm([-5, 7]), level), -5, 0);
  });

  test.prop([anyLine<"mm">(), fc.double({ min: -4000, max: 4000, noNaN: true })])(
    "are undone by the point at that distance",
    (line, along) => {
      const point = pointOnLine(line, mm(along));
      expectClose(distanceFromLine(point, line), 0, 1e-9);
      expectClose(distanceAlongLine(point, line), along, 1e-9);
    },
  );

  test.prop([anyLine<"mm">(), anyFlatPoint<"mm">()])("make a right angle", (line, point) => {
    const foot = pointOnLine(line, distanceAlongLine(point, line));
    expectClose(distance(point, foot), Math.abs(distanceFromLine(point, line)), 1e-8);
  });
});

describe("reflect", () => {
  it("agrees with the vectors: one exact, one from JTS through jsts", () => {
    expectClose(reflectAcross(mm([3, 1]), lineThrough(mm([0, 0]), mm([1, 2]))), [-1, 3], 1e-15);
    expectClose(
      reflectAcross(px([400, 200]), lineThrough(px([100, 0]), px([120, 300]))),
      [-170.796460176991, 238.053097345133],
      1e-12,
    );
  });

  test.prop([anyFlatPoint<"px">(), anyLine<"px">()])("agrees with JTS", (point, across) => {
    const [x, y] = across.through;
    const [farX, farY] = pointOnLine(across, px(1000));
    const image = AffineTransformation.reflectionInstance(x, y, farX, farY).transform(
      new Coordinate(point[0], point[1]),
      new Coordinate(0, 0),
    );
    expectClose(reflectAcross(point, across), [image.x, image.y], 1e-8);
  });

  test.prop([fc.oneof(anyFlatPoint<"px">(), anyDeepPoint<"px">()), anyLine<"px">()])(
    "twice is the identity to 1e-9 at 4000 px, and keeps depth",
    (point, across) => {
      expectClose(reflectAcross(reflectAcross(point, across), across), point, 1e-9);
      expectClose(reflectAcross(point, across)[2], point[2], 0);
    },
  );

  test.prop([anyFlatPoint<"px">(), anyFlatPoint<"px">(), anyLine<"px">()])(
    "keeps distances, and changes the side",
    (one, other, across) => {
      const images = [reflectAcross(one, across), reflectAcross(other, across)] as const;
      expectClose(distance(...images), distance(one, other), 1e-9);
      expectClose(distanceFromLine(images[0], across), -distanceFromLine(one, across), 1e-9);
    },
  );
});

/** Sine of the angle between two lines. */
const sineBetween = (one: Line<"mm">, other: Line<"mm">): number =>
  one.direction[0] * other.direction[1] - one.direction[1] * other.direction[0];

describe("intersect", () => {
  // Tail guide from alare (15.7, −38) through exocanthion (43.9, 0): table of the synthetic face.
  it.each([
    [12, 52.81],
    [20, 58.74],
    [25, 62.45],
  ])("finds the tail end at height %d", (height, x) => {
    const tailGuide = lineThrough(mm([15.7, -38]), mm([43.9, 0]));
    const meeting = intersect(lineAlong(mm([0, height]), [1, 0]), tailGuide);
    expectClose(meeting, { kind: "crossing", at: [x, height] }, 5e-3);
  });

  it("answers parallel lines with their distance, and a line with itself", () => {
    const level = lineAlong(mm([0, 0]), [1, 0]);
    expectClose(
      intersect(level, lineAlong(mm([3, 4]), [-2, 0])),
      { kind: "parallel", apart: 4 },
      0,
    );
    expect(intersect(level, lineAlong(mm([9, 0]), [-1, 0]))).toEqual({ kind: "coincident" });
  });

  it("knows a line again whose points went through rounding", () => {
    const line = lineThrough(mm([0.1, 0.7]), mm([2000.3, 3000.1]));
    const again = lineThrough(pointOnLine(line, mm(3333)), pointOnLine(line, mm(-77)));
    expect(intersect(line, again)).toEqual({ kind: "coincident" });
  });

  test.prop([anyLine<"mm">(), anyLine<"mm">()])("lies on both lines", (one, other) => {
    const meeting = intersect(one, other);
    if (meeting.kind !== "crossing") return;
    const rounding = 1e-9 / Math.abs(sineBetween(one, other));
    expectClose(distanceFromLine(meeting.at, one), 0, rounding);
    expectClose(distanceFromLine(meeting.at, other), 0, rounding);
  });

  test.prop([anyLine<"mm">(), anyLine<"mm">()])("does not depend on the order", (one, other) => {
    const meeting = intersect(one, other);
    const turned = intersect(other, one);
    expect(turned.kind).toBe(meeting.kind);
    if (meeting.kind !== "crossing" || turned.kind !== "crossing") return;
    expectClose(turned.at, meeting.at, 1e-8 / sineBetween(one, other) ** 2);
  });

  test.prop([anyLine<"mm">(), anyLine<"mm">()])("agrees with JTS, through jsts", (one, other) => {
    const meeting = intersect(one, other);
    if (meeting.kind !== "crossing" || Math.abs(sineBetween(one, other)) < 1e-3) return;
    const [p1, p2, q1, q2] = [one, one, other, other].map((line, index) => {
      const [x, y] = pointOnLine(line, mm(index % 2 === 0 ? 0 : 1000));
      return new Coordinate(x, y);
    }) as [Coordinate, Coordinate, Coordinate, Coordinate];
    const expected = Intersection.intersection(p1, p2, q1, q2);
    expectClose([...meeting.at], [expected.x, expected.y], 1e-5);
  });
});
