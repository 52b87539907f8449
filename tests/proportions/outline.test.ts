import { fc, test } from "@fast-check/vitest";
import {
  completeDots,
  measureSide,
  outlineArea,
  type OutlineDots,
  outlinePath,
  thickness,
} from "brow-geometry/proportions";
import { distance } from "brow-geometry/geometry";
import { FACE_MIDLINE, mirror, mm, outline, type OutlineOptions, type Point } from "brow-geometry";
import { outlineBorders } from "brow-geometry/proportions";
import { heightOver } from "../../src/geometry/internal.js";
import { lengthOf } from "brow-geometry/landmarks";
import { flatten, pathArea, pathLength } from "../../src/geometry/internal.js";
import { polygonArea as areaByD3 } from "d3-polygon";
import { Bezier } from "bezier-js";
import { describe, expect, it } from "vitest";
import { anyDrawnBrow, anyOutlineShape, squareFront } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { isSimplePolygon } from "../support/polygons.js";
import { refusal } from "../support/refusal.js";

const usual = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };

describe("outline", () => {
  it("runs through its dots", () => {
    const dots = completeDots(usual);
    const { upper, lower, front, tail } = outline(dots);
    expect(upper.map(([from]) => from)).toEqual([dots.upperStart, dots.upperArch]);
    expectClose(
      lower.map(([from]) => from),
      [dots.lowerStart, dots.lowerBody, dots.lowerArch],
      1e-12,
    );
    expect([upper.at(-1)?.[3], lower.at(-1)?.[3]]).toEqual([dots.tailEnd, dots.tailEnd]);
    expect(front.map(([from, , , to]) => [from, to])).toEqual([[dots.lowerStart, dots.upperStart]]);
    expect(tail).toEqual([]);
  });

  it("rounds the arch or makes it a corner, by one number", () => {
    const slopesAtArch = (angularity: number): readonly number[] => {
      const [front, tail] = outline(completeDots(usual, undefined, { angularity }), {
        angularity,
      }).upper;
      return [
        ((front?.[3][1] ?? 0) - (front?.[2][1] ?? 0)) /
          ((front?.[3][0] ?? 0) - (front?.[2][0] ?? 0)),
        ((tail?.[1][1] ?? 0) - (tail?.[0][1] ?? 0)) / ((tail?.[1][0] ?? 0) - (tail?.[0][0] ?? 0)),
      ];
    };
    expectClose(slopesAtArch(0), [0, 0], 1e-12);
    expectClose(slopesAtArch(0.5), [0.1, -4 / 15], 1e-12);
    expectClose(slopesAtArch(1), [6 / 30, -8 / 15], 1e-12);
  });

  it("is parabolas from dot to dot where no end slope is asked for", () => {
    // From (15, 20) to a level (45, 26): y = 26 − 6 ((45 − x) / 30)².
    const round = { angularity: 0 };
    const { upper } = outlineBorders(
      outline(completeDots(usual, undefined, round), round),
      mm(1e-5),
    );
    for (const x of [18, 27, 40]) {
      expectClose(heightOver(mm(x), upper), 26 - 6 * ((45 - x) / 30) ** 2, 1e-4);
    }
  });

  it("goes straight over an angular arch", () => {
    const corner = { angularity: 1 };
    const { upper } = outline(completeDots(usual, undefined, corner), corner);
    expectClose(pathLength(upper), Math.hypot(30, 6) + Math.hypot(15, 8), 1e-9);
  });

  it("rounds its front behind the start line, by so many half thicknesses", () => {
    for (const [frontRoundness, depth] of [
      [0, 0],
      [0.5, 2],
      [1, 4],
    ] as const) {
      const drawn = outline(completeDots(usual), { frontRoundness });
      const edge = flatten(drawn.front, mm(1e-5)).map(([x]) => x);
      expectClose(Math.min(...edge), 15, 1e-4);
      expectClose(drawn.upper[0]?.[0][0], 15 + depth, 1e-12);
      expectClose(drawn.lower[0]?.[0][0], 15 + depth, 1e-12);
    }
  });

  it("sets the upper corner of a soft front back along the border", () => {
    const drawn = outline(completeDots(usual, undefined, { angularity: 1 }), {
      angularity: 1,
      softFront: mm(3),
    });
    // The border rises by 6 on 30.
    expectClose(drawn.upper[0]?.[0], [18, 20.6], 1e-12);
    expectClose(drawn.lower[0]?.[0], [15, 12], 1e-12);
    const [edge] = drawn.front;
    // √(0 · 3) = 0: control points 0, 0, 3/3 and 3 behind the line; the third lies on the border's tangent.
    expectClose(
      edge?.map(([x]) => x),
      [15, 15, 16, 18],
      1e-12,
    );
    expectClose(edge?.[2][1], 20.2, 1e-12);
  });

  it("takes off as much as lies before its front", () => {
    const straight = { upperStart: mm([0, 8]), upperArch: mm([30, 8]), tailEnd: mm([60, 8]) };
    const stations = { start: mm(8), body: mm(8), arch: mm(8) };
    const areaOf = (shape: OutlineOptions): number =>
      outlineArea(outline(completeDots(straight, stations, shape), shape));
    // A rectangle at its front, the edge behind the line by 4·(1 − 2t)² over heights 8·t²·(3 − 2t):
    // 32 · ∫ (1 − 2t)² · 6t(1 − t) dt = 32/5.
    expectClose(areaOf({}) - areaOf({ frontRoundness: 1 }), 32 / 5, 1e-9);
    // By 4·t² over the same heights: 32 · ∫ t² · 6t(1 − t) dt = 32 · 6 · (1/4 − 1/5).
    expectClose(areaOf({}) - areaOf({ softFront: mm(4) }), (32 * 6) / 20, 1e-9);
  });

  it("is refused where its front would be set back behind a border that rises steeply", () => {
    const steep = {
      upperStart: mm([14, 19]),
      upperArch: mm([33.4, 31]),
      tailEnd: mm([49.4, 25.15]),
    };
    const stations = { start: mm(10), body: mm(2), arch: mm(6) };
    const shape = { angularity: 0.5, frontRoundness: 1, softFront: mm(6) };
    const error = refusal(() => outline(completeDots(steep, stations, shape), shape));
    expect([error.code, error.detail.field]).toEqual(["inconsistent", "softFront"]);
  });

  test.prop([anyDrawnBrow(), anyOutlineShape()])(
    "never passes its start line, and touches it",
    ({ upper, stations }, shape) => {
      const drawn = drawnOrRefused(completeDots(upper, stations, shape), shape);
      if (drawn === undefined) return;
      const nearest = Math.min(...flatten(drawn.front, mm(1e-4)).map(([x]) => x));
      expectClose(nearest, upper.upperStart[0], 1e-3);
      expect(nearest).toBeGreaterThanOrEqual(upper.upperStart[0] - 1e-9);
    },
  );

  it("has the area of the strips that it is made of", () => {
    // Thickness 8, 7, 6, 0 over widths 15, 15, 15, by the areas under a PCHIP in closed form: a piece
    // holds width · (mean of ends) + width² · (slope there − slope here) / 12.
    const dots = completeDots(usual);
    const slopes = [-1 / 15, -1 / 15, -2 / (15 + 15 / 6), 0];
    const end = (3 * (-6 / 15) - -1 / 15) / 2;
    slopes[3] = end;
    const stations = [8, 7, 6, 0];
    let area = 0;
    for (let index = 0; index < 3; index += 1) {
      const [here = 0, next = 0] = stations.slice(index, index + 2);
      const [slopeHere = 0, slopeNext = 0] = slopes.slice(index, index + 2);
      area += 15 * ((here + next) / 2) + (225 * (slopeHere - slopeNext)) / 12;
    }
    expectClose(outlineArea(outline(dots)), area, 1e-9);
  });

  it("draws a flat brow without a step at its arch", () => {
    const rising = { upperStart: mm([15, 18]), upperArch: mm([43, 21]), tailEnd: mm([59, 22.5]) };
    const { upper } = outlineBorders(
      outline(completeDots(rising, undefined, { angularity: 0 }), { angularity: 0 }),
      mm(1e-4),
    );
    const slopes = upper
      .slice(1)
      .map(([x, y], index) => (y - (upper[index]?.[1] ?? 0)) / (x - (upper[index]?.[0] ?? 0)));
    // Flanks of 3/28 and 1.5/16.
    for (const slope of slopes) {
      expect(slope).toBeGreaterThan(0.08);
      expect(slope).toBeLessThan(0.13);
    }
  });

  it.each([
    ["an arch beyond the tail end", { upperArch: mm([61, 26]) }, "dots.tailEnd"],
    ["an arch before the start", { upperArch: mm([14, 26]) }, "dots.upperArch"],
    ["a body before the start", { lowerBody: mm([15, 14]) }, "dots.lowerBody"],
    ["lower dots out of order", { lowerArch: mm([29, 14]) }, "dots.lowerArch"],
    ["a lower arch beyond the tail end", { lowerArch: mm([60, 14]) }, "dots.tailEnd"],
    ["a lower start above the upper border", { lowerStart: mm([15, 20.5]) }, "dots.lowerStart"],
    ["a lower body on the upper border", { lowerBody: mm([30, 24.05]) }, "dots.lowerBody"],
  ] as const)("refuses %s", (_, moved, field) => {
    const dots = { ...completeDots(usual), ...moved };
    const error = refusal(() => outline(dots));
    expect(error.code).toBe("inconsistent");
    expect(error.detail).toMatchObject({ where: "outline", field });
  });

  it("refuses a front edge that would cross the upper border", () => {
    // A border that sags under its chord, and a lower start far out, just below it.
    const dots = { ...completeDots(usual), lowerStart: mm([29, 21.9]), lowerBody: mm([35, 17]) };
    const error = refusal(() => outline(dots, { startSlope: 0, angularity: 1 }));
    expect(error).toMatchObject({ code: "inconsistent", detail: { field: "dots.lowerStart" } });
    expect(error.message).toContain("front edge");
  });

  it.each([
    [{ angularity: 1.1 }, "out-of-range", "options.angularity"],
    [{ startSlope: 3.1 }, "out-of-range", "options.startSlope"],
    [{ tailSlope: -0.1 }, "out-of-range", "options.tailSlope"],
    [{ frontRoundness: 2 }, "out-of-range", "options.frontRoundness"],
    [{ angularity: Number.NaN }, "not-finite", "options.angularity"],
  ] as const)("refuses %s", (options, code, field) => {
    const error = refusal(() => outline(completeDots(usual), options));
    expect(error.code).toBe(code);
    expect(error.detail.field).toBe(field);
  });

  it("refuses a dot that is no place", () => {
    const dots = { ...completeDots(usual), lowerBody: mm([Number.NaN, 12]) };
    expect(refusal(() => outline(dots))).toMatchObject({
      code: "not-finite",
      detail: { field: "dots.lowerBody" },
    });
  });

  const anyOutline = fc
    .tuple(anyDrawnBrow(), anyOutlineShape())
    .map(([{ upper, stations, slant }, shape]) => {
      const dots = completeDots(upper, stations, shape);
      const { lowerStart } = dots;
      return {
        dots: { ...dots, lowerStart: mm([lowerStart[0] + slant, lowerStart[1]]) },
        stations,
        shape,
      };
    });

  test.prop([anyOutline])("is simple, closed and counter-clockwise", ({ dots, shape }) => {
    const drawn = drawnOrRefused(dots, shape);
    if (drawn === undefined) return;
    const path = outlinePath(drawn);
    path.forEach(([from], index) => expect(path.at(index - 1)?.[3]).toEqual(from));
    expect(pathArea(path)).toBeGreaterThan(0);
    expect(isSimplePolygon(flatten(path, mm(0.002)))).toBe(true);
  });

  test.prop([anyOutline])(
    "has its one highest point at an arch above both ends",
    ({ dots, shape }) => {
      const drawn = drawnOrRefused(dots, shape);
      const isArched = dots.upperArch[1] > Math.max(dots.upperStart[1], dots.tailEnd[1]) + 1e-6;
      if (drawn === undefined || !isArched) return;
      const heights = flatten(drawn.upper, mm(0.001)).map(([, y]) => y);
      const top = heights.indexOf(Math.max(...heights));
      expectClose(heights[top], dots.upperArch[1], 0);
      heights.slice(1).forEach((height, index) => {
        if (index < top) expect(height).toBeGreaterThanOrEqual((heights[index] ?? 0) - 1e-12);
        else expect(height).toBeLessThanOrEqual((heights[index] ?? 0) + 1e-12);
      });
      const others = [...drawn.lower, ...drawn.front].flatMap((cubic) =>
        flatten([cubic], mm(0.01)),
      );
      expect(Math.max(...others.map(([, y]) => y))).toBeLessThanOrEqual(dots.upperArch[1] + 1e-9);
    },
  );

  test.prop([anyOutline])(
    "has end slopes that run along their chord, at most three times as steep",
    ({ dots, shape }) => {
      const drawn = drawnOrRefused(dots, squareFront(shape));
      const [front, tail] = drawn?.upper ?? [];
      if (front === undefined || tail === undefined) return;
      const slope = ([x, y]: Point<"mm">, [toX, toY]: Point<"mm">): number => (toY - y) / (toX - x);
      for (const [end, chord] of [
        [slope(front[0], front[1]), slope(front[0], front[3])],
        [slope(tail[2], tail[3]), slope(tail[0], tail[3])],
      ] as const) {
        expect(end * chord).toBeGreaterThanOrEqual(-1e-9);
        expect(Math.abs(end)).toBeLessThanOrEqual(3 * Math.abs(chord) + 1e-9);
      }
      // At the arch no steeper than three times its flanks either; soft to angular where it is the top.
      if (dots.upperArch[1] <= Math.max(dots.upperStart[1], dots.tailEnd[1])) return;
      const before = slope(front[2], front[3]) / slope(front[0], front[3]);
      const after = slope(tail[0], tail[1]) / slope(tail[0], tail[3]);
      expectClose([before, after], [shape.angularity ?? 0.3, shape.angularity ?? 0.3], 1e-6);
    },
  );

  test.prop([anyDrawnBrow(), anyOutlineShape()])(
    "measures back to what was asked for",
    ({ upper, stations }, anyShape) => {
      const shape = squareFront(anyShape);
      const dots = completeDots(upper, stations, shape);
      const drawn = outline(dots, shape);
      const borders = outlineBorders(drawn, mm(0.001));
      const read = measureSide(dots, {
        side: "left",
        landmarks: {},
        skin: { kind: "flat" },
        borders,
      });
      expectClose(read.startThickness, stations.start, 0.02);
      expectClose(read.bodyThickness, stations.body, 0.02);
      expectClose(read.archThickness, stations.arch, 0.02);
      expectClose(thickness(dots.upperArch, borders)?.value, stations.arch, 0.02);

      // Start, arch and tail end lie on the outline, so that lengths between them are the plan's.
      const [front, tail] = drawn.upper;
      expectClose(distance(front?.[0] ?? mm([0, 0]), front?.[3] ?? mm([0, 0])), read.front, 0.02);
      expectClose(distance(tail?.[0] ?? mm([0, 0]), tail?.[3] ?? mm([0, 0])), read.tail, 0.02);
      expectClose(pathLength(drawn.upper), lengthOf(borders.upper, { kind: "flat" }), 0.02);
      const byBezierJs = drawn.upper.reduce(
        (sum, cubic) => sum + new Bezier(cubic.map(([x, y]) => ({ x, y }))).length(),
        0,
      );
      expectClose(pathLength(drawn.upper), byBezierJs, 1e-3);

      const polygon = flatten(outlinePath(drawn), mm(1e-4)).map(([x, y]): [number, number] => [
        x,
        y,
      ]);
      expectClose(outlineArea(drawn), Math.abs(areaByD3(polygon)), 0.02);
    },
  );

  test.prop([anyDrawnBrow(), anyOutlineShape()])(
    "is the mirrored outline on the other side",
    ({ upper, stations }, shape) => {
      const dots = completeDots(upper, stations, shape);
      const [own, image] = [dots, mirror(dots, FACE_MIDLINE)].map((of) =>
        drawnOrRefused(of, shape),
      );
      expect(image === undefined).toBe(own === undefined);
      if (own === undefined || image === undefined) return;
      for (const part of ["upper", "lower", "front"] as const) {
        expectClose(
          image[part].map((cubic) => cubic.map((point) => mirror(point, FACE_MIDLINE))),
          own[part],
          1e-9,
        );
      }
    },
  );
});

/** Slanting start lines and soft fronts may be refused, and then only for the front edge. */
function drawnOrRefused(
  dots: OutlineDots,
  shape: OutlineOptions,
): ReturnType<typeof outline> | undefined {
  try {
    return outline(dots, shape);
  } catch {
    const error = refusal(() => outline(dots, shape));
    const isSoft = error.detail.field === "softFront";
    if (isSoft) expect(outline(dots, { ...shape, softFront: mm(0) })).toBeDefined();
    expect(error.detail.field).toBe(isSoft ? "softFront" : "dots.lowerStart");
    return undefined;
  }
}
