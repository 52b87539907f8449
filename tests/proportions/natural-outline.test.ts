import { test } from "@fast-check/vitest";
import { mm } from "brow-geometry";
import { naturalOutline, outlineArea, outlinePath } from "brow-geometry/proportions";
import { pathArea } from "../../src/geometry/internal.js";
import { polygonArea } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const upper = mm([
  [15, 20],
  [40, 26],
  [58, 18],
]);
const lower = mm([
  [14, 12],
  [40, 20],
  [57, 17],
]);

describe("naturalOutline", () => {
  it("goes from point to point and closes straight at both ends", () => {
    const { front, tail } = naturalOutline({ upper, lower });
    expect([front[0]?.[0], front[0]?.[3]]).toEqual([lower[0], upper[0]]);
    expect([tail[0]?.[0], tail[0]?.[3]]).toEqual([upper[2], lower[2]]);
  });

  it("needs no edge where borders meet in a point, and none for points drawn twice", () => {
    const pointed = naturalOutline({
      upper,
      lower: [...lower.slice(0, 2), ...lower.slice(1, 2), ...upper.slice(2)],
    });
    expect(pointed.tail).toEqual([]);
    expect(pointed.lower.length).toBe(2);
  });

  it.each([
    ["a border of one point", { upper: upper.slice(0, 1), lower }, "wrong-count", "brow.upper"],
    [
      "a border in one place",
      {
        upper,
        lower: mm([
          [14, 12],
          [14, 12],
        ]),
      },
      "coincident-points",
      "brow.lower",
    ],
    [
      "a point that is no number",
      {
        upper,
        lower: mm([
          [14, 12],
          [Number.NaN, 3],
        ]),
      },
      "not-finite",
      "brow.lower[1]",
    ],
  ])("refuses %s", (_, brow, code, field) => {
    const error = refusal(() => naturalOutline(brow));
    expect(error.code).toBe(code);
    expect(error.detail).toMatchObject({ where: "naturalOutline", field });
  });

  test.prop([anyBrow()])("has the area of the polygon through its points", (brow) => {
    const natural = naturalOutline(brow);
    const polygon = [...brow.upper, ...brow.lower.slice().reverse()];
    expectClose(outlineArea(natural), Math.abs(polygonArea(polygon)), 1e-9);
    expect(pathArea(outlinePath(natural))).toBeGreaterThan(0);
  });
});
