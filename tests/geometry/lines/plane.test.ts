import { fc, test } from "@fast-check/vitest";
import { deepPoint } from "brow-geometry/units";
import { distanceFromPlane, footOnPlane, type Plane } from "brow-geometry/geometry";
import { describe } from "vitest";
import { anyAngle, anyDeepPoint, anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const anyPlane: fc.Arbitrary<Plane<"mm">> = fc
  .tuple(anyDeepPoint<"mm">(100), anyAngle(), anyNumber(1))
  .map(([through, angle, z]) => {
    const across = Math.sqrt(1 - z * z);
    const radians = (angle * Math.PI) / 180;
    return { through, normal: [across * Math.cos(radians), across * Math.sin(radians), z] };
  });

describe("a plane", () => {
  test.prop([anyDeepPoint<"mm">(100), anyPlane])(
    "has every foot on itself, straight below its point",
    (point, plane) => {
      const foot = footOnPlane(point, plane);
      const apart = distanceFromPlane(point, plane);
      expectClose(distanceFromPlane(foot, plane), 0, 1e-12 * 1000);
      const [x, y, z] = plane.normal;
      const back = deepPoint<"mm">(foot[0] + apart * x, foot[1] + apart * y, foot[2] + apart * z);
      expectClose(back, point, 1e-9);
    },
  );
});
