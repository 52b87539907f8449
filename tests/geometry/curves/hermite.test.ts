import { fc, test } from "@fast-check/vitest";
import {
  cubicsOf,
  hermiteAt,
  type HermiteCurve,
  hermiteDifference,
  hermiteZeros,
  pchip,
  pointOnCubic,
} from "../../../src/geometry/internal.js";
import { describe, expect, it } from "vitest";
import { anyBetween, anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const anyCurve = fc
  .array(
    fc.record({
      step: anyBetween(0.5, 9),
      y: anyBetween(-9, 9),
      before: anyBetween(-3, 3),
      after: anyBetween(-3, 3),
    }),
    { minLength: 2, maxLength: 5 },
  )
  .map((knots): HermiteCurve => {
    let x = 0;
    return knots.map(({ step, ...knot }) => ({ x: (x += step), ...knot }));
  });

describe("hermiteAt", () => {
  it("is the cubic that has both places and both slopes", () => {
    // y = x³ − x on −1…2: slopes 3x² − 1.
    const cubic = [-1, 2].map((x) => ({
      x,
      y: x ** 3 - x,
      before: 3 * x * x - 1,
      after: 3 * x * x - 1,
    }));
    for (const x of [-1, -0.4, 0, 0.3, 1.9, 2]) expectClose(hermiteAt(cubic, x), x ** 3 - x, 1e-13);
  });

  it("goes on straight beyond its ends", () => {
    const curve = [
      { x: 0, y: 1, before: 2, after: 5 },
      { x: 1, y: 2, before: 7, after: -1 },
    ];
    expectClose([hermiteAt(curve, -2), hermiteAt(curve, 4)], [-3, -1], 1e-15);
  });

  test.prop([anyCurve, anyBetween(0, 1)])("is where the Bézier pieces are", (curve, share) => {
    for (const cubic of cubicsOf<"mm">(curve)) {
      const [x, y] = pointOnCubic(cubic, share);
      expectClose(hermiteAt(curve, x), y, 1e-9);
    }
  });
});

describe("hermiteDifference", () => {
  test.prop([anyCurve, anyCurve, anyBetween(0, 1)])(
    "is the one less the other wherever the other is",
    (one, other, share) => {
      const difference = hermiteDifference(one, other);
      const from = other[0]?.x ?? 0;
      const to = other.at(-1)?.x ?? 0;
      const x = from + share * (to - from);
      expectClose(hermiteAt(difference, x), hermiteAt(one, x) - hermiteAt(other, x), 1e-9);
      expect(difference[0]?.x).toBe(from);
      expect(difference.at(-1)?.x).toBe(to);
    },
  );

  it("keeps a corner of either", () => {
    const corner = [
      { x: 0, y: 0, before: 1, after: 1 },
      { x: 2, y: 2, before: 1, after: -1 },
      { x: 4, y: 0, before: -1, after: -1 },
    ];
    const difference = hermiteDifference(
      corner,
      pchip([
        [0, 0],
        [4, 4],
      ]),
    );
    expectClose(difference[1], { x: 2, y: 0, before: 0, after: -2 }, 1e-12);
  });
});

/** Two knots with slopes: every cubic over 0…1 has them. */
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
