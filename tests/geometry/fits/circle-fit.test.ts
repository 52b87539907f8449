import { fc, test } from "@fast-check/vitest";
import { distance, fitCircle } from "brow-geometry/geometry";
import { mm, type Polyline } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

/** Gander, Golub & Strebel, BIT 1994;34:558–578; points from memory. */
const GANDER = mm([
  [1, 7],
  [2, 6],
  [5, 8],
  [7, 7],
  [9, 5],
  [3, 7],
]);

const sumOfSquares = (points: Polyline<"mm">, x: number, y: number, radius: number): number =>
  points.reduce((sum, point) => sum + (distance(point, mm([x, y])) - radius) ** 2, 0);

describe("fitCircle", () => {
  it("fits the points of Gander, Golub & Strebel geometrically", () => {
    const { centre, radius } = fitCircle(GANDER);
    expectClose([...centre, radius], [4.739782419, 2.983532747, 4.714226001], 1e-7);
    // Where the gradient vanishes, worked out with 40 digits: the figures above are off in the eighth.
    expectClose([...centre, radius], [4.739782410906, 2.983532699292, 4.714226037792], 1e-11);
  });

  it("is better than their algebraic fit", () => {
    const algebraic = sumOfSquares(GANDER, 5.379413317, 7.253198477, 3.037041458);
    const geometric = fitCircle(GANDER);
    expectClose(
      geometric.sumOfSquares,
      sumOfSquares(GANDER, geometric.centre[0], geometric.centre[1], geometric.radius),
      1e-12,
    );
    expect(geometric.sumOfSquares).toBeLessThan(algebraic);
  });

  it("goes exactly through three points", () => {
    const { centre, radius, residuals } = fitCircle(
      mm([
        [10, 0],
        [0, 10],
        [-10, 0],
      ]),
    );
    expectClose([...centre, radius], [0, 0, 10], 1e-12);
    expectClose(residuals, [0, 0, 0], 1e-12);
  });

  test.prop([
    anyFlatPoint<"mm">(),
    fc.double({ min: 0.5, max: 500, noNaN: true }),
    fc.array(fc.double({ min: 0.3, max: 1, noNaN: true }), { minLength: 3, maxLength: 6 }),
  ])("finds the circle on which all points lie", ([x, y], radius, gaps) => {
    let turned = 0;
    const angles = gaps.map((gap) => (turned += gap));
    const points = angles.map((angle) =>
      mm([x + radius * Math.cos(angle), y + radius * Math.sin(angle)]),
    );
    const fit = fitCircle(points);
    expectClose([...fit.centre, fit.radius], [x, y, radius], 1e-6 * radius + 1e-8);
  });

  test.prop([
    fc.array(fc.tuple(fc.double({ min: -0.5, max: 0.5, noNaN: true })), {
      minLength: 8,
      maxLength: 8,
    }),
    fc.tuple(
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
    ),
  ])("is beaten by no circle beside it", (noise, [x, y, wider]) => {
    const points = noise.map(([off], index) => {
      const angle = (index * Math.PI) / 4;
      return mm([(10 + off) * Math.cos(angle), (10 + off) * Math.sin(angle)]);
    });
    const { centre, radius, sumOfSquares: least } = fitCircle(points);
    const other = sumOfSquares(points, centre[0] + x, centre[1] + y, radius + wider);
    expectClose(Math.min(0, other - least), 0, 1e-9);
  });

  it.each([
    [
      "two points",
      mm([
        [0, 0],
        [1, 1],
      ]),
      "wrong-count",
    ],
    [
      "points on a line",
      mm([
        [0, 0],
        [1, 1],
        [2, 2],
        [5, 5],
      ]),
      "ill-conditioned",
    ],
    [
      "one point thrice",
      mm([
        [1, 2],
        [1, 2],
        [1, 2],
      ]),
      "ill-conditioned",
    ],
    [
      "NaN",
      mm([
        [0, 0],
        [1, Number.NaN],
        [2, 5],
      ]),
      "not-finite",
    ],
  ])("refuses %s", (_, points, code) => {
    expect(refusal(() => fitCircle(points)).code).toBe(code);
  });
});
