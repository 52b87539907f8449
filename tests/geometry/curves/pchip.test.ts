import { fc, test } from "@fast-check/vitest";
import { hermiteAt, pchip } from "../../../src/geometry/internal.js";
import { curveMonotoneX } from "d3-shape";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const anyPoints = fc
  .array(fc.tuple(anyBetween(0.1, 9), anyBetween(-9, 9)), {
    minLength: 2,
    maxLength: 9,
  })
  .map((steps) => {
    let x = 0;
    return steps.map(([step, y]): readonly [number, number] => [(x += step), y]);
  });

describe("pchip", () => {
  it("does not run past a step", () => {
    // Fritsch & Carlson 1980; scipy.interpolate.PchipInterpolator gives the same.
    const curve = pchip([
      [0, 0],
      [1, 0],
      [2, 1],
      [3, 1],
    ]);
    expectClose(
      [0.5, 1.5, 2.25].map((x) => hermiteAt(curve, x)),
      [0, 0.5, 1],
      1e-15,
    );
  });

  it("has the slopes of d3-shape's monotone curve where points are evenly spaced", () => {
    // Both take a harmonic mean there; d3 writes its slopes as control points, a third of the way on.
    const points = [
      [0, 0],
      [1, 1],
      [2, 4],
      [3, 4.5],
      [4, 9],
    ] as const;
    const drawn: number[][] = [];
    const context = {
      moveTo: () => undefined,
      lineTo: () => undefined,
      closePath: () => undefined,
      bezierCurveTo: (...numbers: number[]) => drawn.push(numbers),
    };
    const line = curveMonotoneX(context);
    line.lineStart();
    for (const [x, y] of points) line.point(x, y);
    line.lineEnd();
    const slopes = drawn
      .slice(0, -1)
      .map(([, , arrivingX = 0, arrivingY = 0, x = 0, y = 0]) => (y - arrivingY) / (x - arrivingX));
    const own = pchip(points)
      .slice(1, -1)
      .map(({ before }) => before);
    own.forEach((slope, index) => expect(Math.sign(slope)).toBe(Math.sign(slopes[index] ?? 0)));
    // Slopes 1, 3, 0.5, 4.5: harmonic means 1.5, 6/7, 0.9.
    expectClose(own, [1.5, 6 / 7, 0.9], 1e-12);
  });

  it("is the straight line through two points, and through points on a line", () => {
    expectClose(
      hermiteAt(
        pchip([
          [0, 1],
          [4, 9],
        ]),
        1,
      ),
      3,
      1e-15,
    );
    expectClose(
      hermiteAt(
        pchip([
          [0, 1],
          [1, 3],
          [4, 9],
        ]),
        2.7,
      ),
      6.4,
      1e-12,
    );
  });

  test.prop([anyPoints, anyBetween(0, 1)])(
    "goes through its points and stays between neighbours",
    (points, share) => {
      const curve = pchip(points);
      points.forEach(([x, y], index) => {
        expectClose(hermiteAt(curve, x), y, 0);
        const next = points[index + 1];
        if (next === undefined) return;
        const between = hermiteAt(curve, x + share * (next[0] - x));
        expect(between).toBeGreaterThanOrEqual(Math.min(y, next[1]) - 1e-12);
        expect(between).toBeLessThanOrEqual(Math.max(y, next[1]) + 1e-12);
      });
    },
  );

  test.prop([anyPoints])("is the same turned round", (points) => {
    const curve = pchip(points);
    const back = pchip(points.map(([x, y]) => [-x, y] as const).reverse());
    expectClose(
      back.map(({ y, before }) => [y, before]).reverse(),
      curve.map(({ y, before }) => [y, -before]),
      1e-12,
    );
  });
});
