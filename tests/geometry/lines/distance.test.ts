import { fc, test } from "@fast-check/vitest";
import { distance, spaceDistance } from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import { describe, it } from "vitest";
import { anyDeepPoint, anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("distance", () => {
  it("lies in the plane, whatever the depth", () => {
    expectClose(distance(mm([0, 0]), mm([3, 4])), 5, 0);
    expectClose(distance(mm([0, 0, 100]), mm([3, 4])), 5, 0);
  });

  it("agrees with the closed form of (1000, 1200)–(1300, 1160)", () => {
    expectClose(distance(mm([1000, 1200]), mm([1300, 1160])), 302.654919008431, 1e-12);
  });

  test.prop([anyFlatPoint<"mm">(), anyFlatPoint<"mm">(), anyFlatPoint<"mm">()])(
    "is symmetric, and no detour is shorter",
    (one, other, third) => {
      expectClose(distance(one, other), distance(other, one), 0);
      const detour = distance(one, third) + distance(third, other);
      expectClose(Math.min(0, detour - distance(one, other)), 0, 1e-9);
    },
  );
});

describe("spaceDistance", () => {
  it("counts depth where both points have it", () => {
    expectClose(spaceDistance(mm([0, 0, 0]), mm([2, 3, 6])), 7, 0);
    expectClose(spaceDistance(mm([0, 0, 0]), mm([3, 4])), 5, 0);
  });

  test.prop([
    anyDeepPoint<"mm">(),
    anyDeepPoint<"mm">(),
    fc.double({ min: -9, max: 9, noNaN: true }),
  ])("is never shorter than in the plane", (one, other) => {
    expectClose(Math.min(0, spaceDistance(one, other) - distance(one, other)), 0, 1e-9);
  });
});
