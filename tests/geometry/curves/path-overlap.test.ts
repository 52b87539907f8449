import { test } from "@fast-check/vitest";
import { completeDots, outlinePath } from "brow-geometry/proportions";
import { type FlatPoint, type Length, mm, outline, type Polyline } from "brow-geometry";
import { type Cubic, sharedArea } from "brow-geometry/geometry";
import {
  cubicsOf,
  flatten,
  mapPath,
  pathArea,
  overlapWith,
  reversePath,
  straightCubic,
} from "../../../src/geometry/internal.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import { describe, expect, it } from "vitest";
import {
  anyBetween,
  anyDrawnBrow,
  anyOutlineShape,
  squareFront,
} from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { polygonOfJsts } from "../../support/polygons.js";
import { refusal } from "../../support/refusal.js";

/** So coarse that an area read from polygons would show it. */
const COARSE = mm(5);

function polygon(corners: Polyline<"mm">): readonly Cubic<"mm">[] {
  return corners.map((from, index) =>
    straightCubic(from, corners[(index + 1) % corners.length] ?? from),
  );
}

const square = (x: number, y: number, size = 2): readonly Cubic<"mm">[] =>
  polygon(
    mm([
      [x, y],
      [x + size, y],
      [x + size, y + size],
      [x, y + size],
    ]),
  );

/** Under y = height · 4 x (1 − x) over 0…1. */
function hill(height: number): readonly Cubic<"mm">[] {
  const slope = 4 * height;
  return [
    straightCubic(mm([1, 0]), mm([0, 0])),
    ...cubicsOf<"mm">([
      { x: 0, y: 0, before: slope, after: slope },
      { x: 1, y: 0, before: -slope, after: -slope },
    ]),
  ];
}

type Path = readonly Cubic<"mm">[];

const pathOverlap = (one: Path, other: Path, error: Length<"mm">): number =>
  overlapWith(other, error)(one);

describe("overlapWith", () => {
  it("of two squares is a seventh of what both cover", () => {
    const shared = pathOverlap(square(0, 0), square(1, 1), COARSE);
    expect(shared).toBe(1);
    expect(shared / (4 + 4 - shared)).toBe(1 / 7);
  });

  it("of parabolas is exact, however coarse polygons may be", () => {
    // ∫ 4 x (1 − x) = 2/3, and all of a lower hill lies under a higher one.
    expectClose(pathOverlap(hill(1), hill(1), COARSE), 2 / 3, 1e-14);
    expectClose(pathOverlap(hill(1), hill(2), COARSE), 2 / 3, 1e-14);
    // Above y = 3/4 the hill is half as wide and a quarter as high: an eighth of it.
    expectClose(pathOverlap(hill(1), square(-1, 0.75, 4), COARSE), 2 / 3 / 8, 1e-13);
    expectClose(pathOverlap(hill(1), square(-4, -1, 4.5), COARSE), 1 / 3, 1e-14);
  });

  it("of paths that touch or lie apart is nothing", () => {
    for (const far of [square(2, 0), square(0, 2), square(9, 9)]) {
      expect(pathOverlap(square(0, 0), far, COARSE)).toBe(0);
    }
    expect(pathOverlap(square(0, 0), [], COARSE)).toBe(0);
  });

  it("does not mind which way paths are run through", () => {
    const back = reversePath(square(1, 1));
    expect(pathOverlap(square(0, 0), back, COARSE)).toBe(1);
    expect(pathOverlap(back, square(0, 0), COARSE)).toBe(1);
  });

  it("reads paths that turn back as polygons, to the stated error", () => {
    const fold = polygon(
      mm([
        [0, 0],
        [4, 0],
        [1, 1],
        [4, 2],
        [0, 2],
      ]),
    );
    // The square 0…2 less the notch's triangle from (1, 1) to its right edge: 1 wide, 2/3 high there.
    expectClose(pathOverlap(fold, square(0, 0), mm(0.001)), 4 - 1 / 3, 1e-12);
    const circle = circleOf(1);
    expectClose(pathOverlap(circle, square(0, 0), mm(1e-5)), Math.PI / 4, 3e-3);
  });

  it("reads a path that crosses itself as polygons are read", () => {
    const bow = polygon(
      mm([
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ]),
    );
    expectClose(pathOverlap(bow, square(0, 0), COARSE), 2, 1e-12);
  });

  it.each([0, Number.NaN])("refuses an error of %s", (error) => {
    expect(refusal(() => pathOverlap(hill(1), hill(1), mm(error))).detail.field).toBe("error");
  });

  test.prop([
    anyDrawnBrow(),
    anyDrawnBrow(),
    anyOutlineShape(),
    anyBetween(-3, 3),
    anyBetween(-3, 3),
  ])("of two brows agrees with JTS and with the sweep", (one, other, shape, x, y) => {
    const square = squareFront(shape);
    const drawn = ({ upper, stations }: typeof one): readonly Cubic<"mm">[] =>
      outlinePath(outline(completeDots(upper, stations, square), square));
    const [first, moved] = [
      drawn(one),
      mapPath(drawn(other), (point) => mm([point[0] + x, point[1] + y])),
    ];
    const shared = pathOverlap(first, moved, COARSE);
    const [fine, finer] = [flatten(first, mm(5e-4)), flatten(moved, mm(5e-4))];
    // A chord of 5e-4 error along some 100 mm of edges.
    expectClose(shared, sharedArea(fine, finer), 0.05);
    expectClose(
      shared,
      OverlayOp.intersection(polygonOfJsts(fine), polygonOfJsts(finer)).getArea(),
      0.05,
    );
    expectClose(pathOverlap(moved, first, COARSE), shared, 1e-9);
    expect(shared).toBeLessThanOrEqual(Math.min(pathArea(first), pathArea(moved)) + 1e-9);
  });

  test.prop([anyDrawnBrow(), anyOutlineShape()])(
    "of a brow with itself is its area",
    ({ upper, stations }, shape) => {
      const square = squareFront(shape);
      const path = outlinePath(outline(completeDots(upper, stations, square), square));
      expectClose(pathOverlap(path, path, COARSE), pathArea(path), 1e-9);
    },
  );
});

/** A circle by four cubics: its error is 2.7e-4 of the radius at most. */
function circleOf(radius: number): readonly Cubic<"mm">[] {
  const handle = 0.5522847498 * radius;
  return [0, 1, 2, 3].map((quarter): Cubic<"mm"> => {
    const [cos, sin] = [[1, 0, -1, 0][quarter] ?? 0, [0, 1, 0, -1][quarter] ?? 0];
    const turned = (x: number, y: number): FlatPoint<"mm"> =>
      mm([x * cos - y * sin, x * sin + y * cos]);
    return [turned(radius, 0), turned(radius, handle), turned(handle, radius), turned(0, radius)];
  });
}
