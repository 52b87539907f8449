import { fc, test } from "@fast-check/vitest";
import { fitCircle, fitEllipse } from "brow-geometry/geometry";
import { mm, type Polyline } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

/** Points of an ellipse at given parameters, its longer axis turned by an angle. */
function rimOf(
  [x, y]: readonly [number, number],
  semiMajor: number,
  semiMinor: number,
  turn: number,
  parameters: readonly number[],
): Polyline<"mm"> {
  return parameters.map((parameter) => {
    const [along, across] = [semiMajor * Math.cos(parameter), semiMinor * Math.sin(parameter)];
    return mm([
      x + along * Math.cos(turn) - across * Math.sin(turn),
      y + along * Math.sin(turn) + across * Math.cos(turn),
    ]);
  });
}
const around = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => (2 * Math.PI * index) / count + 0.1);

describe("fitEllipse", () => {
  it("goes exactly through five points", () => {
    const fit = fitEllipse(rimOf([3, -2], 10, 6, 0.5, [0, 1, 2, 3.5, 5]));
    expectClose([...fit.centre, fit.semiMajor, fit.semiMinor], [3, -2, 10, 6], 1e-9);
    expectClose(Math.abs(fit.major[0] * Math.cos(0.5) + fit.major[1] * Math.sin(0.5)), 1, 1e-9);
    expectClose(fit.residuals, [0, 0, 0, 0, 0], 1e-9);
  });

  it("agrees with the circle where the rim is one", () => {
    const noise = [0.2, -0.1, 0.05, 0.15, -0.2, 0.1, -0.12, 0.02];
    const rim = around(8).map((angle, index) => {
      const radius = 10 + (noise[index] ?? 0) / 100;
      return mm([radius * Math.cos(angle), radius * Math.sin(angle)]);
    });
    const [ellipse, circle] = [fitEllipse(rim), fitCircle(rim)];
    expectClose((ellipse.semiMajor + ellipse.semiMinor) / 2, circle.radius, 1e-5);
    expectClose([...ellipse.centre], [...circle.centre], 1e-5);
  });

  test.prop([
    anyFlatPoint<"mm">(1000),
    fc.double({ min: 1, max: 500, noNaN: true }),
    fc.double({ min: 0.4, max: 0.99, noNaN: true }),
    fc.double({ min: 0, max: 3, noNaN: true }),
    fc.integer({ min: 5, max: 12 }),
  ])("finds the ellipse on which all points lie", ([x, y], semiMajor, ratio, turn, count) => {
    const fit = fitEllipse(rimOf([x, y], semiMajor, ratio * semiMajor, turn, around(count)));
    expectClose(
      [...fit.centre, fit.semiMajor, fit.semiMinor],
      [x, y, semiMajor, ratio * semiMajor],
      1e-7 * semiMajor + 1e-8,
    );
    const cosine = fit.major[0] * Math.cos(turn) + fit.major[1] * Math.sin(turn);
    expectClose(Math.abs(cosine), 1, 1e-6);
  });

  it.each([
    ["four points", rimOf([0, 0], 2, 1, 0, [0, 1, 2, 3]), "wrong-count"],
    [
      "points on a line",
      mm([
        [0, 0],
        [1, 1],
        [2, 2],
        [5, 5],
        [7, 7],
      ]),
      "ill-conditioned",
    ],
    [
      "points on a hyperbola",
      mm([
        [1, 0],
        [1.25, 0.75],
        [1.25, -0.75],
        [-1, 0],
        [-1.25, 0.75],
        [-1.25, -0.75],
      ]),
      "ill-conditioned",
    ],
    [
      "NaN",
      mm([
        [0, 0],
        [1, 1],
        [2, 2],
        [5, 5],
        [7, Number.NaN],
      ]),
      "not-finite",
    ],
  ])("refuses %s", (_, points, code) => {
    expect(refusal(() => fitEllipse(points)).code).toBe(code);
  });
});
