import { fc, test } from "@fast-check/vitest";
import { mm, type Polyline } from "brow-geometry";
import { densify, pointAlong, polylineLength } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { partBetween } from "../../../src/geometry/internal.js";
import { anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const roof = mm([
  [0, 0],
  [30, 40],
  [60, 0],
]);

describe("partBetween", () => {
  it("runs from foot to foot, whichever point is named first", () => {
    const part = mm([
      [15, 20],
      [30, 40],
      [45, 20],
    ]);
    expectClose(partBetween(roof, mm([11, 23]), mm([49, 23])), part, 1e-12);
    expectClose(partBetween(roof, mm([49, 23]), mm([11, 23])), part, 1e-12);
  });

  it("goes on as the end legs run", () => {
    const [first, , , last] = partBetween(
      [...roof, mm([60, 0])].flatMap((point, index) =>
        index === 1 ? [point, mm([45, 20])] : [point],
      ),
      mm([-3, -4]),
      mm([63, -4]),
    );
    expectClose(
      [first, last],
      [
        [-3, -4],
        [63, -4],
      ],
      1e-12,
    );
  });

  it("counts a hook in full", () => {
    const hooked = mm([
      [0, 0],
      [40, 0],
      [40, -10],
      [35, -10],
    ]);
    expectClose(polylineLength(partBetween(hooked, mm([0, 0]), mm([35, -10]))), 55, 1e-12);
  });

  it("holds for a line of points that all fall together", () => {
    expect(
      partBetween(
        mm([
          [1, 1],
          [1, 1],
        ]),
        mm([0, 0]),
        mm([5, 5]),
      ),
    ).toEqual(
      mm([
        [1, 1],
        [1, 1],
      ]),
    );
  });

  const anyShare = fc.double({ min: 0, max: 1, noNaN: true });
  const lengthOf = (line: Polyline<"mm">, from: number, to: number): number => {
    const whole = polylineLength(line);
    const at = (share: number): Polyline<"mm">[number] => pointAlong(line, mm(share * whole)).at;
    return polylineLength(partBetween(line, at(from), at(to))) / whole;
  };
  /** Borders that do not come near themselves: their x grow. */
  const anyBorder = anyPolyline<"mm">(10).map((points) =>
    points.map(([, y], index) => mm([5 * index, y])),
  );

  test.prop([anyBorder, anyShare, anyShare])("is as long as the way between", (line, from, to) => {
    expectClose(lengthOf(line, from, to), Math.abs(to - from), 1e-9);
  });

  test.prop([anyBorder, anyShare, anyShare, fc.double({ min: 0.5, max: 9, noNaN: true })])(
    "does not depend on points added on the legs",
    (line, from, to, step) => {
      expectClose(lengthOf(densify(line, mm(step)), from, to), lengthOf(line, from, to), 1e-9);
    },
  );
});
