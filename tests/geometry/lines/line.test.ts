import { fc, test } from "@fast-check/vitest";
import {
  distance,
  distanceAlongLine,
  distanceFromLine,
  lineAlong,
  lineThrough,
  pointOnLine,
} from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFlatPoint, anyLine } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

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
