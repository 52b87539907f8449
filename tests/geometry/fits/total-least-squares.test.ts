import { fc, test } from "@fast-check/vitest";
import { type Direction, distanceFromLine, fitLine, lineAlong } from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyLine, anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

describe("fitLine", () => {
  it("fits Pearson's data of 1901 (agrees with scipy.odr)", () => {
    const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
    const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
    const { line, sumOfSquares } = fitLine(x.map((each, index) => mm([each, y[index] ?? 0])));
    const slope = line.direction[1] / line.direction[0];
    expectClose(slope, -0.5455611975, 5e-11);
    expectClose(line.through[1] - slope * line.through[0], 5.7840437745, 5e-10);
    expectClose(sumOfSquares, 0.618572759437, 5e-13);
  });

  it("runs from the first point towards the last, upright lines too", () => {
    const upright: Direction = fitLine(
      mm([
        [2, 9],
        [2, 5],
        [2, 1],
      ]),
    ).line.direction;
    expectClose(upright, [0, -1], 1e-12);
  });

  test.prop([
    anyLine<"mm">(),
    fc.array(fc.double({ min: -900, max: 900, noNaN: true }), { minLength: 2, maxLength: 9 }),
  ])("finds the line on which all points lie", (line, along) => {
    fc.pre(Math.max(...along) - Math.min(...along) > 1);
    const points = along.map((each) =>
      mm([line.through[0] + each * line.direction[0], line.through[1] + each * line.direction[1]]),
    );
    const { residuals, sumOfSquares } = fitLine(points);
    expectClose(
      residuals,
      residuals.map(() => 0),
      1e-8,
    );
    expectClose(sumOfSquares, 0, 1e-8);
  });

  test.prop([anyPolyline<"mm">(), anyLine<"mm">()])(
    "is beaten by no other line",
    (points, other) => {
      const fit = fitLine(points);
      const through = lineAlong(fit.line.through, other.direction);
      for (const line of [other, through]) {
        const sum = points.reduce((total, point) => total + distanceFromLine(point, line) ** 2, 0);
        expectClose(Math.min(0, sum - fit.sumOfSquares), 0, 1e-6 * (1 + sum));
      }
    },
  );

  it.each([
    ["one point", mm([[1, 2]]), "wrong-count"],
    [
      "one point thrice",
      mm([
        [1, 2],
        [1, 2],
        [1, 2],
      ]),
      "coincident-points",
    ],
    [
      "a square",
      mm([
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ]),
      "ill-conditioned",
    ],
    [
      "NaN",
      mm([
        [0, 0],
        [1, Number.NaN],
      ]),
      "not-finite",
    ],
  ])("refuses %s", (_, points, code) => {
    expect(refusal(() => fitLine(points)).code).toBe(code);
  });
});
