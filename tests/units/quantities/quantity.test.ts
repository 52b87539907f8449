import { deepPoint, flatPoint, hasDepth, length } from "brow-geometry/units";
import { mm, px } from "brow-geometry";
import { describe, expect, it } from "vitest";

describe("mm and px", () => {
  it("give the very value back", () => {
    const point = [31.5, 0] as const;
    const points = [point, [1, 2] as const];
    expect(mm(point)).toBe(point);
    expect(px(points)).toBe(points);
    expect(mm(54)).toBe(54);
    expect(JSON.stringify({ width: px(54), at: mm([1, 2, 3]) })).toBe('{"width":54,"at":[1,2,3]}');
  });
});

describe("length, flatPoint, deepPoint", () => {
  it("make plain data", () => {
    expect(length<"mm">(3)).toBe(3);
    expect(flatPoint<"mm">(3, 4)).toEqual([3, 4]);
    expect(deepPoint<"px">(3, 4, 5)).toEqual([3, 4, 5]);
  });
});

describe("hasDepth", () => {
  it("tells points apart", () => {
    expect(hasDepth(mm([1, 2, 0]))).toBe(true);
    expect(hasDepth(mm([1, 2]))).toBe(false);
  });
});
