import { test } from "@fast-check/vitest";
import {
  hermiteAt,
  type HermiteCurve,
  hermiteZeros,
  pchip,
} from "../../../src/geometry/internal.js";
import { describe, expect, it } from "vitest";
import { anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

/** Two knots with slopes: any cubic over 0…1. */
const cubic = (from: number, leaving: number, arriving: number, to: number): HermiteCurve => [
  { x: 0, y: from, before: leaving, after: leaving },
  { x: 1, y: to, before: arriving, after: arriving },
];

describe("hermiteZeros", () => {
  it("finds all three of a cubic", () => {
    // (x − 0.2)(x − 0.5)(x − 0.9) = x³ − 1.6 x² + 0.73 x − 0.09.
    const zeros = hermiteZeros(cubic(-0.09, 0.73, 3 - 3.2 + 0.73, 0.04));
    expectClose(zeros, [0.2, 0.5, 0.9], 1e-12);
  });

  it("finds those at knots, and no place that the curve only touches", () => {
    expectClose(
      hermiteZeros(
        pchip([
          [0, -1],
          [1, 0],
          [2, 1],
        ]),
      ),
      [1],
      1e-12,
    );
    expect(
      hermiteZeros(
        pchip([
          [0, 1],
          [1, 0],
          [2, 1],
        ]),
      ),
    ).toEqual([]);
    // (x − 0.5)², and no zero at either end.
    expect(hermiteZeros(cubic(0.25, -1, 1, 0.25))).toEqual([]);
    expect(hermiteZeros(cubic(0, 1, 1, 1))).toEqual([]);
  });

  it("of a curve that is nothing there are none", () => {
    expect(hermiteZeros(cubic(0, 0, 0, 0))).toEqual([]);
    expect(hermiteZeros([])).toEqual([]);
  });

  test.prop([anyNumber(2), anyNumber(5), anyNumber(5), anyNumber(2)])(
    "misses no change of sign",
    (from, leaving, arriving, to) => {
      const curve = cubic(from, leaving, arriving, to);
      const zeros = hermiteZeros(curve);
      for (const zero of zeros) expectClose(hermiteAt(curve, zero), 0, 1e-9);
      // Between two zeros the sign is one, looked at where the curve is not next to 0.
      const stops = [0, ...zeros, 1];
      stops.slice(1).forEach((stop, index) => {
        const start = stops[index] ?? 0;
        const heights = Array.from({ length: 40 }, (_, part) =>
          hermiteAt(curve, start + ((part + 0.5) / 40) * (stop - start)),
        ).filter((height) => Math.abs(height) > 1e-9);
        expect(new Set(heights.map(Math.sign)).size).toBeLessThanOrEqual(1);
      });
    },
  );
});
