import { test } from "@fast-check/vitest";
import { distance, midpoint } from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("midpoint", () => {
  it("has depth where both points have it", () => {
    expect(midpoint(mm([-16, 0, 2]), mm([15, 2, 4]))).toEqual([-0.5, 1, 3]);
    expect(midpoint(mm([-16, 0, 2]), mm([15, 2]))).toEqual([-0.5, 1]);
  });

  test.prop([anyFlatPoint<"mm">(), anyFlatPoint<"mm">()])(
    "is equally far from both",
    (one, other) => {
      const middle = midpoint(one, other);
      expectClose(distance(middle, one), distance(middle, other), 1e-9);
      expectClose(distance(middle, one), distance(one, other) / 2, 1e-9);
    },
  );
});
