import { test } from "@fast-check/vitest";
import {
  distanceFromLine,
  intersect,
  type Line,
  lineAlong,
  lineThrough,
  pointOnLine,
} from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import Intersection from "jsts/org/locationtech/jts/algorithm/Intersection.js";
import { describe, expect, it } from "vitest";
import { anyLine } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

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
