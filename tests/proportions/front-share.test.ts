import { frontShare } from "brow-geometry/proportions";
import { mm } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

describe("frontShare", () => {
  it("is two thirds for 33 and 16.5 mm", () => {
    // Trade practice, no source.
    expectClose(frontShare(mm(33), mm(16.5)), 2 / 3, 1e-15);
  });

  it("runs from nothing to all", () => {
    expect(frontShare(mm(0), mm(16.5))).toBe(0);
    expect(frontShare(mm(33), mm(0))).toBe(1);
  });

  it.each([
    [-1, 15, "out-of-range", "front"],
    [30, -1, "out-of-range", "tail"],
    [0, 0, "out-of-range", "tail"],
    [Number.NaN, 15, "not-finite", "front"],
    [30, Number.POSITIVE_INFINITY, "not-finite", "tail"],
  ])("refuses %s and %s", (front, tail, code, field) => {
    const error = refusal(() => frontShare(mm(front), mm(tail)));
    expect(error.code).toBe(code);
    expect(error.detail.field).toBe(field);
  });
});
