import { test } from "@fast-check/vitest";
import { mm, px } from "brow-geometry";
import { polygonArea } from "brow-geometry/geometry";
import { polygonArea as areaByD3 } from "d3-polygon";
import { describe, expect, it } from "vitest";
import { anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("polygonArea", () => {
  it("is positive from the x axis towards the y axis", () => {
    expect(
      polygonArea(
        mm([
          [0, 0],
          [4, 0],
          [4, 3],
        ]),
      ),
    ).toBe(6);
    expect(
      polygonArea(
        px([
          [0, 0],
          [4, 3],
          [4, 0],
        ]),
      ),
    ).toBe(-6);
  });

  it("is nothing without three points", () => {
    expect(polygonArea<"mm">([])).toBe(0);
    expectClose(
      polygonArea(
        mm([
          [1, 2],
          [3, 4],
        ]),
      ),
      0,
      1e-12,
    );
  });

  test.prop([anyPolyline<"px">(4000)])("agrees with d3-polygon, whose y points down", (points) => {
    const pairs = points.map(([x, y]): [number, number] => [x, y]);
    expectClose(polygonArea(points), -areaByD3(pairs), 1e-6);
  });
});
