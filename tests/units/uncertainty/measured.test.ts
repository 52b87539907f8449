import { measured, mm } from "brow-geometry";
import { measuredPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

describe("measured", () => {
  it("pairs a value with its uncertainty, which may be 0", () => {
    expect(measured(mm(52.5), mm(0.3))).toEqual({ value: 52.5, u: 0.3 });
    expect(measured(-1, 0)).toEqual({ value: -1, u: 0 });
  });

  it.each([
    [Number.NaN, 1, "value", "not-finite"],
    [1, Number.NaN, "u", "not-finite"],
    [1, Number.POSITIVE_INFINITY, "u", "not-finite"],
    [1, -0.1, "u", "out-of-range"],
  ])("refuses %d ± %d", (value, u, field, code) => {
    expect(refusal(() => measured(value, u))).toMatchObject({ code, detail: { field } });
  });
});

describe("measuredPoint", () => {
  it("keeps one uncertainty for all axes, or each axis its own", () => {
    expect(measuredPoint(mm([1, 2]), mm(0.3)).u).toBe(0.3);
    expect(measuredPoint(mm([1, 2]), [mm(0.3), mm(0.4)]).u).toEqual([0.3, 0.4]);
  });

  it("refuses an axis without uncertainty, and a negative one", () => {
    expect(refusal(() => measuredPoint(mm([1, 2, 3]), [mm(1), mm(1)])).code).toBe("not-finite");
    expect(refusal(() => measuredPoint(mm([1, 2]), mm(-1))).code).toBe("out-of-range");
    expect(refusal(() => measuredPoint(mm([1, Number.NaN]), mm(1))).code).toBe("not-finite");
  });
});
