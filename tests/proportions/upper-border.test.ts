import { fc, test } from "@fast-check/vitest";
import {
  completeDots,
  measureSide,
  outlineArea,
  outlineBorders,
  outlinePath,
  thickness,
} from "brow-geometry/proportions";
import { type CompleteDots, mm, outline, type OutlineOptions } from "brow-geometry";
import { type Cubic, distance } from "brow-geometry/geometry";
import { lengthOf } from "brow-geometry/landmarks";
import { Bezier } from "bezier-js";
import { polygonArea as areaByD3 } from "d3-polygon";
import { describe, expect, it } from "vitest";
import { flatten, heightOver, pathArea, pathLength } from "../../src/geometry/internal.js";
import { anyDrawnBrow, anyOutlineShape, squareFront } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { isSimplePolygon } from "../support/polygons.js";
import { refusal } from "../support/refusal.js";

const usual = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };

/** The usual brow with its body elsewhere, and 7 mm thick there. */
function withBody(x: number, y: number, shape: OutlineOptions = {}): CompleteDots<"mm"> {
  const dots = completeDots(usual, undefined, shape);
  return { ...dots, upperBody: mm([x, y]), lowerBody: mm([x, y - 7]) };
}

const slopeLeaving = ([from, leaving]: Cubic<"mm">): number =>
  (leaving[1] - from[1]) / (leaving[0] - from[0]);

const slopeArriving = ([, , arriving, to]: Cubic<"mm">): number =>
  (to[1] - arriving[1]) / (to[0] - arriving[0]);

/** A brow whose body was moved anywhere between start and arch, sideways and in height. */
const anyMoved = fc
  .tuple(anyDrawnBrow(), anyOutlineShape(), fc.tuple(share(), share()))
  .filter(([{ upper }]) => Math.abs(upper.upperArch[1] - upper.upperStart[1]) > 0.01)
  .map(([{ upper, stations }, shape, [across, up]]) => {
    const { upperStart: start, upperArch: arch } = upper;
    const body = mm([
      start[0] + across * (arch[0] - start[0]),
      start[1] + up * (arch[1] - start[1]),
    ]);
    const free = completeDots(upper, stations, shape);
    const dots = { ...free, upperBody: body, lowerBody: mm([body[0], body[1] - stations.body]) };
    return { free, dots, stations, shape };
  });

function share(): fc.Arbitrary<number> {
  return fc.integer({ min: 1, max: 99 }).map((percent) => percent / 100);
}

describe("an outline whose body was moved", () => {
  it("runs through the body, in three pieces above and three below", () => {
    const dots = withBody(28, 25);
    const { upper, lower } = outline(dots);
    expect(upper.map(([from]) => from)).toEqual([dots.upperStart, dots.upperBody, dots.upperArch]);
    expect(lower.map(([from]) => from)).toEqual([dots.lowerStart, dots.lowerBody, dots.lowerArch]);
  });

  it("is bent by a parabola where that leaves it rising", () => {
    // Straight flanks of 0.2 from (15, 20); the body half-way, 0.75 mm above: 0.75 · 4 / 30 = 0.1 more at
    // the start, nothing at the body, 0.1 less at the arch.
    const corner = { angularity: 1 };
    const [first, second] = outline(withBody(30, 23.75, corner), corner).upper;
    if (first === undefined || second === undefined) expect.fail("no front");
    expectClose(slopeLeaving(first), 0.3, 1e-12);
    expectClose([slopeArriving(first), slopeLeaving(second)], [0.2, 0.2], 1e-12);
    expectClose(slopeArriving(second), 0.1, 1e-12);
    expectClose(heightOver(mm(22.5), flatten([first], mm(1e-6))), 21.5 + 0.75 * 0.75, 1e-5);
  });

  it("keeps the start's slope where that was chosen, up to three times that of the chord beside it", () => {
    const startAt = (y: number): number => {
      const [first] = outline(withBody(30, y, { startSlope: 2 }), { startSlope: 2 }).upper;
      return first === undefined ? Number.NaN : slopeLeaving(first);
    };
    expectClose(startAt(24.5), 2 * 0.2, 1e-12);
    expectClose(startAt(21), 3 * (1 / 15), 1e-12);
  });

  it.each([
    ["above the arch", 30, 26.5],
    ["level with the arch", 30, 26],
    ["under the start", 30, 19.9],
    ["before the start", 14, 22],
    ["at the arch", 45, 25],
    ["beyond the arch", 47, 25],
  ])("is refused with a body %s", (_, x, y) => {
    const moved = withBody(x, y);
    const dots = { ...moved, lowerBody: mm([30, 15]) };
    const error = refusal(() => outline(dots));
    expect(error.code).toBe("inconsistent");
    expect(error.detail.where).toBe("outline");
    expect(["dots.upperBody", "dots.upperArch"]).toContain(error.detail.field);
  });

  it("may rise from a level body", () => {
    const { upper } = outline(withBody(30, 20));
    expect(Math.min(...flatten(upper.slice(0, 2), mm(0.001)).map(([, y]) => y))).toBe(20);
  });

  it("takes a body of any height that lies on the way of a falling front, and no other", () => {
    const falling = { upperStart: mm([15, 24]), upperArch: mm([45, 20]), tailEnd: mm([60, 15]) };
    const dots = completeDots(falling);
    const at = (y: number): typeof dots => ({ ...dots, upperBody: mm([30, y]) });
    expect(outline(at(21)).upper).toHaveLength(3);
    expect(refusal(() => outline(at(24.5))).detail.field).toBe("dots.upperBody");
    expect(refusal(() => outline(at(19))).detail.field).toBe("dots.upperBody");
  });

  test.prop([anyMoved])("is simple, closed and counter-clockwise", ({ dots, shape }) => {
    // A corner set back behind a body that was moved may lie behind the lower border.
    const path = outlinePath(outline(dots, { ...shape, softFront: mm(0) }));
    path.forEach(([from], index) => expect(path.at(index - 1)?.[3]).toEqual(from));
    expect(pathArea(path)).toBeGreaterThan(0);
    // Where the tail thins out like a thorn, straight pieces of either border may touch: half a
    // millimetre before the end of a tail of 25 mm, a brow 2 mm thick at the arch may be 2 · 0.02³ mm
    // thick, and pieces have to keep to less than half of that.
    const short = flatten(path, mm(5e-6)).filter((point) => distance(point, dots.tailEnd) > 0.5);
    expect(isSimplePolygon(short)).toBe(true);
  });

  test.prop([anyMoved])(
    "rises throughout to its one highest point, the arch, where that lies above both ends",
    ({ dots, shape }) => {
      const { upper } = outline(dots, squareFront(shape));
      if (dots.upperArch[1] <= Math.max(dots.upperStart[1], dots.tailEnd[1])) return;
      const points = flatten(upper, mm(0.001));
      const top = points.findIndex(([x]) => x === dots.upperArch[0]);
      points.slice(1).forEach(([x, y], index) => {
        const [before, below] = points[index] ?? [0, 0];
        expect(x).toBeGreaterThan(before);
        expect((index < top ? 1 : -1) * (y - below)).toBeGreaterThanOrEqual(-1e-12);
      });
    },
  );

  test.prop([anyMoved])(
    "leaves and arrives within three slopes of the chords",
    ({ dots, shape }) => {
      for (const cubic of outline(dots, squareFront(shape)).upper) {
        const [from, , , to] = cubic;
        const chord = (to[1] - from[1]) / (to[0] - from[0]);
        for (const slope of [slopeLeaving(cubic), slopeArriving(cubic)]) {
          const most = 3 * Math.abs(chord) + 1e-9;
          expect(Math.abs(slope)).toBeLessThanOrEqual(most);
          expect(slope * chord).toBeGreaterThanOrEqual(-1e-9);
        }
      }
    },
  );

  test.prop([anyMoved])("measures back to what was asked for", ({ dots, stations, shape }) => {
    const drawn = outline(dots, squareFront(shape));
    const borders = outlineBorders(drawn, mm(0.001));
    const context = { side: "left", landmarks: {}, skin: { kind: "flat" } } as const;
    const read = measureSide(dots, { ...context, borders });
    const onDots = measureSide(dots, context);
    expectClose(read.startThickness, stations.start, 0.02);
    expectClose([read.bodyThickness, onDots.bodyThickness], [stations.body, stations.body], 0.02);
    expectClose(read.archThickness, stations.arch, 0.02);
    expectClose(thickness(dots.upperBody, borders)?.value, stations.body, 0.02);
    expectClose(heightOver(mm(dots.upperBody[0]), borders.upper), dots.upperBody[1], 0.02);

    const [first, second, tail] = drawn.upper;
    if (first === undefined || second === undefined) expect.fail("no front");
    const arch = tail === undefined ? second[0] : tail[0];
    expectClose(distance(first[0], arch), read.front, 0.02);
    expectClose(distance(arch, drawn.upper.at(-1)?.[3] ?? first[0]), read.tail, 0.02);
    expectClose(pathLength(drawn.upper), lengthOf(borders.upper, { kind: "flat" }), 0.02);
    const byBezierJs = drawn.upper.reduce(
      (sum, cubic) => sum + new Bezier(cubic.map(([x, y]) => ({ x, y }))).length(),
      0,
    );
    expectClose(pathLength(drawn.upper), byBezierJs, 1e-3);
    const polygon = flatten(outlinePath(drawn), mm(1e-4)).map(([x, y]): [number, number] => [x, y]);
    expectClose(outlineArea(drawn), Math.abs(areaByD3(polygon)), 0.02);
  });

  test.prop([anyDrawnBrow(), anyOutlineShape()])(
    "does not jump when the body leaves its border by next to nothing",
    ({ upper, stations }, anyShape) => {
      const shape = squareFront(anyShape);
      const dots = completeDots(upper, stations, shape);
      const rise = upper.upperArch[1] - upper.upperStart[1];
      if (Math.abs(rise) < 0.1) return;
      const [x, y] = dots.upperBody;
      const nudged = {
        ...dots,
        upperBody: mm([x, y + 1e-6 * Math.sign(upper.upperStart[1] - y)]),
      };
      const [still, moved] = [dots, nudged].map(
        (dots) => outlineBorders(outline(dots, shape), mm(1e-5)).upper,
      );
      if (still === undefined || moved === undefined) return;
      for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) {
        const at = mm(upper.upperStart[0] + part * (upper.upperArch[0] - upper.upperStart[0]));
        expectClose(heightOver(at, moved), heightOver(at, still) ?? Number.NaN, 1e-3);
      }
    },
  );
});
