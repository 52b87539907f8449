import { deepPoint, flatPoint, hasDepth, length } from "brow-geometry/units";
import { mm, px } from "brow-geometry";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

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

describe("mm and px, given what is no number", () => {
  it("say which of them it was, and what is needed", () => {
    expect(refusal(() => mm("5" as never)).message).toBe(
      'mm: value is "5"; needs a number, a point or a list of points',
    );
    expect(refusal(() => px(null as never)).message).toMatch(/^px: value is null; needs a number/);
    expect(refusal(() => mm({ x: 1, y: 2 } as never)).code).toBe("not-parsed");
  });

  it("refuse any text and any object, however deep, and no nesting of numbers", () => {
    const numbers = fc.oneof(fc.double(), fc.array(fc.double()), fc.array(fc.array(fc.double())));
    const others = fc.oneof(fc.string(), fc.boolean(), fc.constant(undefined), fc.object());
    fc.assert(
      fc.property(numbers, others, (known, other) => {
        expect(mm(known as never)).toBe(known);
        expect(refusal(() => mm(other as never)).code).toBe("not-parsed");
        expect(refusal(() => px([[1, 2], [other]] as never)).code).toBe("not-parsed");
      }),
    );
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
