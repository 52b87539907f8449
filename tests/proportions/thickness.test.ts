import { test, fc } from "@fast-check/vitest";
import { FACE_MIDLINE, mirror, mm } from "brow-geometry";
import { thickness } from "brow-geometry/proportions";
import { describe, expect, it } from "vitest";
import { anyBetween, anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";

describe("thickness", () => {
  const slanting = {
    upper: mm([
      [0, 20],
      [40, 50],
    ]),
    lower: mm([
      [0, 10],
      [40, 40],
    ]),
  };

  it("is read along the midline, or square to the upper border", () => {
    expectClose(
      thickness(mm([20, 35]), slanting),
      { value: 10, to: [20, 25], extended: false },
      1e-12,
    );
    // Borders that rise 3 on 4 lie 10 · 4/5 apart, square to them.
    expectClose(thickness(mm([20, 35]), slanting, "normal")?.value, 8, 1e-12);
  });

  it("is read along the bisector at a corner, as a ruler is held", () => {
    // A right angle at the top: its bisector is the vertical.
    const roof = {
      upper: mm([
        [0, 0],
        [10, 10],
        [20, 0],
      ]),
      lower: mm([
        [0, -6],
        [10, 4],
        [20, -6],
      ]),
    };
    expectClose(
      thickness(mm([10, 10]), roof, "normal"),
      { value: 6, to: [10, 4], extended: false },
      1e-12,
    );
    // A slope of 3 on 4, then level: the bisector leans by half the angle, 18.43°.
    const bent = {
      upper: mm([
        [0, 0],
        [40, 30],
        [80, 30],
      ]),
      lower: mm([
        [0, -10],
        [40, 20],
        [80, 20],
      ]),
    };
    const reading = thickness(mm([40, 30]), bent, "normal");
    expectClose(reading?.to, [40 + 10 / 3, 20], 1e-9);
  });

  it("extends a lower border that ends too early, and says so", () => {
    const late = {
      upper: mm([
        [14, 20],
        [40, 26],
      ]),
      lower: mm([
        [17, 14],
        [40, 20],
      ]),
    };
    expectClose(
      thickness(mm([14, 20]), late),
      { value: 6 + (3 * 6) / 23, to: [14, 14 - (3 * 6) / 23], extended: true },
      1e-9,
    );
  });

  it("has no answer where the lower border is not below", () => {
    const upright = {
      upper: mm([
        [14, 20],
        [40, 26],
      ]),
      lower: mm([
        [17, 0],
        [17, 20],
      ]),
    };
    expect(thickness(mm([14, 20]), upright)).toBeUndefined();
    const crossed = {
      upper: mm([
        [14, 20],
        [40, 26],
      ]),
      lower: mm([
        [14, 24],
        [40, 30],
      ]),
    };
    expect(thickness(mm([14, 20]), crossed)).toBeUndefined();
  });

  it("reads a point drawn twice as one", () => {
    const twice = {
      ...slanting,
      upper: mm([
        [0, 20],
        [20, 35],
        [20, 35],
        [40, 50],
      ]),
    };
    expectClose(thickness(mm([20, 35]), twice, "normal")?.value, 8, 1e-12);
  });

  test.prop([anyBrow(), anyBetween(0, 1), fc.constantFrom("vertical", "normal")])(
    "is the same on the mirrored brow",
    (brow, share, direction) => {
      const from = brow.upper[0]?.[0] ?? 0;
      const to = brow.upper.at(-1)?.[0] ?? 0;
      const at = mm([from + share * (to - from), 40]);
      const how = direction;
      const image = {
        upper: mirror(brow.upper, FACE_MIDLINE),
        lower: mirror(brow.lower, FACE_MIDLINE),
      };
      expectClose(
        thickness(mirror(at, FACE_MIDLINE), image, how)?.value,
        thickness(at, brow, how)?.value,
        1e-9,
      );
    },
  );
});
