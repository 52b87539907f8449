import { fc, test } from "@fast-check/vitest";
import { formatLength, mm, parseLength } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

describe("formatLength", () => {
  it.each([
    [29.62, 0.5, "29.5 mm"],
    [29.75, 0.5, "30.0 mm"],
    [29.62, 0.1, "29.6 mm"],
    [29.62, 1, "30 mm"],
    [29.62, 0.25, "29.50 mm"],
    [0.07, 0.1, "0.1 mm"],
    [-1.3, 0.5, "-1.5 mm"],
    [-0.2, 0.5, "0.0 mm"],
    [-0, 0.5, "0.0 mm"],
    [1234, 5, "1235 mm"],
  ])("writes %d to a step of %d", (length, step, expected) => {
    expect(formatLength(mm(length), { step: mm(step) })).toBe(expected);
  });

  test.prop([fc.double({ min: 0, max: 500, noNaN: true }), fc.constantFrom(0.1, 0.25, 0.5, 1, 2)])(
    "is read back to within half a step",
    (length, step) => {
      const written = formatLength(mm(length), { step: mm(step) });
      expectClose(parseLength(written), length, step / 2 + 1e-9);
      expect(formatLength(mm(-length), { step: mm(step) })).not.toMatch(/^-0(\.0*)? /);
    },
  );

  it("refuses what is no length and no step", () => {
    expect(refusal(() => formatLength(mm(Number.NaN))).code).toBe("not-finite");
    expect(refusal(() => formatLength(mm(1), { step: mm(0) })).code).toBe("out-of-range");
  });
});
