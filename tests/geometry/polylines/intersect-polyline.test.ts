import { test } from "@fast-check/vitest";
import {
  distance,
  distanceFromLine,
  intersectPolyline,
  lineAlong,
  lineThrough,
  pointAlong,
} from "brow-geometry/geometry";
import { type FlatPoint, mm, type Polyline } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyLine, anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const roof = mm([
  [0, 0],
  [10, 10],
  [20, 0],
]);
const upright = (x: number): ReturnType<typeof lineAlong<"mm">> => lineAlong(mm([x, 0]), [0, 1]);
const places = (
  line: ReturnType<typeof upright>,
  polyline: Polyline<"mm">,
): readonly FlatPoint<"mm">[] => intersectPolyline(line, polyline).map(({ at }) => at);

describe("intersectPolyline", () => {
  it("finds every hit in order", () => {
    const level = lineAlong(mm([-50, 5]), [1, 0]);
    expectClose(
      places(level, roof),
      [
        [5, 5],
        [15, 5],
      ],
      1e-12,
    );
    expectClose(
      places(level, [...roof].reverse()),
      [
        [15, 5],
        [5, 5],
      ],
      1e-12,
    );
  });

  it("counts a corner once, drawn once or twice", () => {
    expectClose(places(upright(10), roof), [[10, 10]], 1e-12);
    expectClose(
      places(
        upright(10),
        roof.flatMap((point) => [point, point]),
      ),
      [[10, 10]],
      1e-12,
    );
  });

  it("hits the ends without extending", () => {
    expectClose(
      intersectPolyline(upright(0), roof),
      [{ at: [0, 0], along: 0, extended: false }],
      1e-12,
    );
    expect(intersectPolyline(upright(20), roof).map(({ extended }) => extended)).toEqual([false]);
  });

  it("extends past the nearer end where the line misses, and flags it", () => {
    expectClose(
      intersectPolyline(upright(23), roof),
      [{ at: [23, -3], along: 23 * Math.SQRT2, extended: true }],
      1e-9,
    );
    expectClose(
      intersectPolyline(upright(-2), roof),
      [{ at: [-2, -2], along: -2 * Math.SQRT2, extended: true }],
      1e-9,
    );
  });

  it("answers a line that misses even the extensions with nothing", () => {
    const level = mm([
      [0, 0],
      [10, 0],
    ]);
    expect(intersectPolyline(lineAlong(mm([0, 5]), [1, 0]), level)).toEqual([]);
  });

  it("counts a stretch that lies on the line where it begins", () => {
    const step = mm([
      [0, 0],
      [5, 5],
      [9, 5],
      [12, 8],
    ]);
    expectClose(places(lineAlong(mm([0, 5]), [1, 0]), step).slice(0, 1), [[5, 5]], 1e-12);
  });

  test.prop([anyLine<"mm">(), anyPolyline<"mm">()])(
    "lies on the line and on the polyline",
    (line, polyline) => {
      for (const { at, along, extended } of intersectPolyline(line, polyline)) {
        // An extension that nearly runs along the line meets it far away.
        const far = 1 + distance(polyline[0] ?? at, at) / 4000;
        expectClose(distanceFromLine(at, line), 0, 1e-7 * far);
        expectClose(pointAlong(polyline, along), { at, along, extended }, 1e-9 * far);
      }
    },
  );

  test.prop([anyLine<"mm">(), anyPolyline<"mm">()])(
    "extends only where there is no hit within",
    (line, polyline) => {
      const hits = intersectPolyline(line, polyline);
      if (hits.some(({ extended }) => extended)) expect(hits).toHaveLength(1);
      const sides = polyline.map((point) => Math.sign(distanceFromLine(point, line)));
      if (sides.includes(1) && sides.includes(-1)) {
        expect(hits.length).toBeGreaterThan(0);
        expect(hits.every(({ extended }) => !extended)).toBe(true);
      }
    },
  );

  it("refuses a polyline without a direction", () => {
    const work = (): unknown =>
      intersectPolyline(
        lineThrough(mm([0, 0]), mm([1, 1])),
        mm([
          [3, 3],
          [3, 3],
        ]),
      );
    expect(refusal(work).code).toBe("coincident-points");
  });
});
