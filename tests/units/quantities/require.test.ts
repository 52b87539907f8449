import type { Point, Polyline } from "brow-geometry";
import { mm } from "brow-geometry";
import {
  requireFinite,
  requireFinitePoint,
  requirePolyline,
  requirePositive,
  requireWithin,
} from "../../../src/units/internal.js";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

describe("requireFinite and requirePositive", () => {
  it("let good numbers pass", () => {
    expect(() => {
      requireFinite("x", -3);
      requirePositive("x", 1e-300);
    }).not.toThrow();
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "refuse %d",
    (value) => {
      expect(refusal(() => requireFinite("x", value)).code).toBe("not-finite");
      expect(refusal(() => requirePositive("x", value)).code).toBe("not-finite");
    },
  );

  it.each([0, -0, -1])("ask for more than %d", (value) => {
    expect(refusal(() => requirePositive("x", value)).code).toBe("out-of-range");
  });
});

describe("requireWithin", () => {
  it.each([0.4, 0.6, 0.9])("lets %d pass", (value) => {
    expect(() => requireWithin("x", value, 0.4, 0.9)).not.toThrow();
  });

  it.each([
    [0.39, "out-of-range"],
    [0.91, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("refuses %d", (value, code) => {
    expect(refusal(() => requireWithin("x", value, 0.4, 0.9)).code).toBe(code);
  });
});

describe("requireFinitePoint", () => {
  it.each([[[1, 2]], [[1, 2, 3]]])("lets %j pass", (point) => {
    expect(() => requireFinitePoint("at", point as unknown as Point<"mm">)).not.toThrow();
  });

  it.each([
    [[1]],
    [[1, 2, 3, 4]],
    [[1, Number.NaN]],
    [[1, 2, Number.POSITIVE_INFINITY]],
    [["1", 2]],
    [{ x: 1, y: 2 }],
    [null],
    [undefined],
  ])("refuses %j", (point) => {
    const work = (): void => requireFinitePoint("at", point as unknown as Point<"mm">);
    expect(refusal(work).message).toContain("needs two or three finite numbers");
  });
});

describe("requirePolyline", () => {
  it("names the point that is wrong", () => {
    const line = mm([
      [1, 2],
      [3, Number.NaN],
    ]);
    expect(refusal(() => requirePolyline("brow.upper", line, 2)).detail.field).toBe(
      "brow.upper[1]",
    );
  });

  it("asks for enough points", () => {
    expect(refusal(() => requirePolyline("upper", mm([[1, 2]]), 2)).code).toBe("wrong-count");
    const none = null as unknown as Polyline<"mm">;
    expect(refusal(() => requirePolyline("upper", none, 1)).code).toBe("wrong-count");
  });
});
