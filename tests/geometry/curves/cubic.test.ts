import { fc, test } from "@fast-check/vitest";
import { Bezier } from "bezier-js";
import { type FlatPoint, mm, px } from "brow-geometry";
import { type Cubic, pathData, polygonArea } from "brow-geometry/geometry";
import {
  cubicsOf,
  flatten,
  graphOf,
  hermiteAt,
  type HermiteCurve,
  mapPath,
  pathArea,
  pathLength,
  pchip,
  pointOnCubic,
  reversePath,
  straightCubic,
} from "../../../src/geometry/internal.js";
import { describe, expect, it } from "vitest";
import { anyBetween, anyFlatPoint, anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const anyCubic: fc.Arbitrary<Cubic<"mm">> = fc.tuple(
  anyFlatPoint<"mm">(100),
  anyFlatPoint<"mm">(100),
  anyFlatPoint<"mm">(100),
  anyFlatPoint<"mm">(100),
);

/** Two to four cubics that join end to end and close. */
const anyClosedPath = fc
  .array(fc.tuple(anyFlatPoint<"mm">(100), anyFlatPoint<"mm">(100), anyFlatPoint<"mm">(100)), {
    minLength: 2,
    maxLength: 4,
  })
  .map((corners) =>
    corners.map(([from, leaving, arriving], index): Cubic<"mm"> => {
      const [to] = corners[(index + 1) % corners.length] ?? [from];
      return [from, leaving, arriving, to];
    }),
  );

function byBezierJs(cubic: Cubic<"mm">): Bezier {
  return new Bezier(cubic.map(([x, y]) => ({ x, y })));
}

describe("pointOnCubic", () => {
  test.prop([anyCubic, anyBetween(0, 1)])("agrees with bezier-js", (cubic, at) => {
    const { x, y } = byBezierJs(cubic).get(at);
    expectClose(pointOnCubic(cubic, at), [x, y], 1e-9);
  });
});

describe("straightCubic", () => {
  test.prop([anyFlatPoint<"mm">(100), anyFlatPoint<"mm">(100), anyBetween(0, 1)])(
    "runs evenly from end to end",
    (from, to, at) => {
      const place = [0, 1].map(
        (axis) => (from[axis] ?? 0) + at * ((to[axis] ?? 0) - (from[axis] ?? 0)),
      );
      expectClose(pointOnCubic(straightCubic(from, to), at), place, 1e-9);
    },
  );
});

describe("pathLength", () => {
  it.each([
    [
      "a parabola",
      [
        [0, 0],
        [1 / 3, 0],
        [2 / 3, 1 / 3],
        [1, 1],
      ],
      Math.sqrt(5) / 2 + Math.asinh(2) / 4,
    ],
    [
      "a flat arch",
      [
        [0, 0],
        [60, -45],
        [150, -60],
        [210, -5],
      ],
      227.7469930297608,
    ],
    [
      "a cusp",
      [
        [0, 0],
        [1, 1],
        [0, 1],
        [1, 0],
      ],
      2 * Math.SQRT2 - 1,
    ],
    // Two turns of a double-backing line, over which two rules once agreed by chance.
    [
      "a line that turns twice",
      [
        [0, 0],
        [0, -33.04348988458514],
        [0, 93.72201962396502],
        [0, -68.1551375426352],
      ],
      112.31032807238907,
    ],
  ] as const)("of %s is the closed form", (_, points, expected) => {
    const [from, leaving, arriving, to] = points.map(([x, y]) => mm([x, y]));
    expectClose(pathLength([[from, leaving, arriving, to] as Cubic<"mm">]), expected, 1e-9);
  });

  test.prop([anyCubic])("agrees with bezier-js, which does not subdivide", (cubic) => {
    // Where a cubic doubles back, its fixed 24 points are a few parts in a thousand off.
    const [own, other] = [pathLength([cubic]), byBezierJs(cubic).length()];
    expectClose(own, other, 0.02 * own + 1e-9);
  });

  test.prop([anyCubic])("is that of the polyline, as far as the polyline is", (cubic) => {
    const line = flatten([cubic], mm(0.0005));
    const sum = line.slice(1).reduce((total, [x, y], index) => {
      const [fromX, fromY] = line[index] as FlatPoint<"mm">;
      return total + Math.hypot(x - fromX, y - fromY);
    }, 0);
    expectClose(sum, pathLength([cubic]), 0.02);
    expect(sum).toBeLessThanOrEqual(pathLength([cubic]) + 1e-9);
  });
});

describe("pathArea", () => {
  it("of the stretch under a parabola is a third", () => {
    // ∫₀¹ x² dx; both sides straight down to the x axis.
    const parabola: Cubic<"mm"> = [mm([0, 0]), mm([1 / 3, 0]), mm([2 / 3, 1 / 3]), mm([1, 1])];
    const path = [
      ...reversePath([parabola]),
      straightCubic(mm([0, 0]), mm([1, 0])),
      straightCubic(mm([1, 0]), mm([1, 1])),
    ];
    expectClose(pathArea(path), 1 / 3, 1e-15);
    expectClose(pathArea(reversePath(path)), -1 / 3, 1e-15);
  });

  test.prop([anyClosedPath])("agrees with the polygon along it", (path) => {
    const polygon = flatten(path, mm(0.0005));
    expectClose(polygonArea(polygon), pathArea(path), 1);
  });

  test.prop([anyClosedPath, anyFlatPoint<"mm">(1000)])(
    "does not care where the path lies",
    (path, by) => {
      const moved = mapPath(path, ([x, y]) => mm([x + by[0], y + by[1]]));
      expectClose(pathArea(moved), pathArea(path), 1e-6);
    },
  );

  it("of nothing is nothing", () => {
    expect(pathArea<"mm">([])).toBe(0);
  });
});

describe("flatten", () => {
  test.prop([anyCubic, fc.constantFrom(0.01, 0.1, 1)])(
    "strays by no more than the stated error",
    (cubic, error) => {
      const line = flatten([cubic], mm(error));
      const count = line.length - 1;
      for (let index = 0; index < count; index += 1) {
        const [fromX, fromY] = line[index] as FlatPoint<"mm">;
        const [toX, toY] = line[index + 1] as FlatPoint<"mm">;
        for (const part of [0.2, 0.5, 0.8]) {
          const [x, y] = pointOnCubic(cubic, (index + part) / count);
          const size = (toX - fromX) ** 2 + (toY - fromY) ** 2;
          const along =
            size === 0 ? 0 : ((x - fromX) * (toX - fromX) + (y - fromY) * (toY - fromY)) / size;
          const foot = Math.min(Math.max(along, 0), 1);
          expect(
            Math.hypot(fromX + foot * (toX - fromX) - x, fromY + foot * (toY - fromY) - y),
          ).toBeLessThanOrEqual(error + 1e-9);
        }
      }
    },
  );

  it("keeps ends exactly, and straight pieces whole", () => {
    const path = [
      straightCubic(mm([0.1, 0.7]), mm([3.3, 4.1])),
      straightCubic(mm([3.3, 4.1]), mm([9.9, 0.3])),
    ];
    expect(flatten(path, mm(1e-6))).toEqual([
      [0.1, 0.7],
      [3.3, 4.1],
      [9.9, 0.3],
    ]);
    expect(flatten<"mm">([], mm(0.1))).toEqual([]);
  });

  it.each([0, -1, Number.NaN])("refuses an error of %s", (error) => {
    expect(
      refusal(() => flatten([straightCubic(mm([0, 0]), mm([1, 1]))], mm(error))).detail.field,
    ).toBe("error");
  });
});

describe("pathData", () => {
  it("draws what was given, rounded, and closes it", () => {
    const path: readonly Cubic<"px">[] = [
      [px([0, -0.0001]), px([0.12345, 8]), px([8, 8]), px([8, 0])],
      [px([8, 0]), px([6, 0]), px([2, 0]), px([0, 0])],
    ];
    expect(pathData(path)).toBe("M0 0C0.123 8 8 8 8 0C6 0 2 0 0 0Z");
    expect(pathData(path, 1)).toBe("M0 0C0.1 8 8 8 8 0C6 0 2 0 0 0Z");
    expect(pathData<"px">([])).toBe("");
  });

  test.prop([anyClosedPath])("can be read back", (path) => {
    const numbers = pathData(path, 6).slice(1, -1).split(/[C ]/).map(Number);
    const points = [
      path[0]?.[0],
      ...path.flatMap(([, leaving, arriving, to]) => [leaving, arriving, to]),
    ];
    expectClose(
      numbers,
      points.flatMap((point) => [point?.[0], point?.[1]]),
      1e-6,
    );
  });
});

const anyPoints = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 20 }), anyNumber(10)), { minLength: 2, maxLength: 8 })
  .map((steps) => {
    let x = 0;
    return steps.map(([step, y]): readonly [number, number] => [(x += step), y]);
  });

describe("graphOf", () => {
  test.prop([anyPoints])("is the way back from a curve to its cubics, run either way", (points) => {
    const curve = pchip(points);
    const path = cubicsOf<"mm">(curve);
    for (const run of [path, reversePath(path)]) {
      const graph = graphOf(run) as HermiteCurve;
      expect(graph.map(({ x }) => x)).toEqual(curve.map(({ x }) => x));
      for (const cubic of path) {
        const [x, y] = pointOnCubic(cubic, 0.3);
        expectClose(hermiteAt(graph, x), y, 1e-9);
      }
    }
  });

  it("is nothing where a path turns back, has a gap, stands upright or goes unevenly", () => {
    const [here, there, far] = [mm([0, 0]), mm([4, 1]), mm([9, 0])];
    expect(graphOf([straightCubic(here, far), straightCubic(far, there)])).toBeUndefined();
    expect(graphOf([straightCubic(here, there), straightCubic(mm([4, 2]), far)])).toBeUndefined();
    expect(graphOf([straightCubic(there, mm([4, 5]))])).toBeUndefined();
    expect(graphOf([[here, mm([3, 0]), mm([3.5, 1]), there]])).toBeUndefined();
    expect(graphOf([])).toBeUndefined();
  });
});
