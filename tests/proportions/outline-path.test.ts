import { test } from "@fast-check/vitest";
import {
  completeDots,
  naturalOutline,
  outlineArea,
  outlineBorders,
  outlinePath,
  overlapOutlines,
} from "brow-geometry/proportions";
import {
  faceFrame,
  mm,
  naturalDots,
  outline,
  px,
  scaleFromReference,
  toPhoto,
  turnToFront,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { pathData } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { mapOutline } from "../../src/proportions/internal.js";
import { flatten, mapPath, pathArea, pointOnCubic } from "../../src/geometry/internal.js";
import { anyBetween, anyBrow, anyPose } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { photograph } from "../support/photograph.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticHead, turnedHead } from "../support/synthetic-head.js";
import { refusal } from "../support/refusal.js";

const dots = completeDots({
  upperStart: mm([15, 20]),
  upperArch: mm([45, 26]),
  tailEnd: mm([60, 18]),
});
const drawn = outline(dots, { frontRoundness: 0.4 });

describe("outlinePath", () => {
  it("visits lower border, upper border and front edge, and closes", () => {
    const path = outlinePath(drawn);
    expectClose(
      path.map(([from]) => from),
      [
        drawn.lower[0]?.[0],
        dots.lowerBody,
        dots.lowerArch,
        dots.tailEnd,
        dots.upperArch,
        drawn.upper[0]?.[0],
      ],
      1e-12,
    );
    // Both corners of the front lie 0.4 half thicknesses behind the start line.
    expect(pathData(path)).toMatch(/^M16\.6 .*Z$/);
  });

  it("is counter-clockwise on the other side, and in the photo's own axes, too", () => {
    const image = mapOutline(drawn, ([x, y]) => mm([-x, y]));
    expect(pathArea(outlinePath(image))).toBeGreaterThan(0);
    expectClose(outlineArea(image), outlineArea(drawn), 1e-9);
    expect(pathArea(outlinePath(mapOutline(drawn, ([x, y]) => px([x, -y]))))).toBeGreaterThan(0);
  });
});

describe("mapOutline", () => {
  test.prop([anyPose()])("puts the exact curve on the photo", (pose) => {
    const photo = photograph(syntheticFace(), pose);
    const scale = scaleFromReference(px([0, 0]), px([100, 0]), mm(100 * pose.factor));
    const frame = faceFrame(photo, scale);
    const onPhoto = mapOutline(drawn, (point) => toPhoto(point, frame));
    // Points of the curve on the photo are photographed points of the curve: 8 of each piece.
    const [own, there] = [outlinePath(drawn), outlinePath(onPhoto)];
    const points = own.flatMap((cubic) => flatten([cubic], mm(0.01)));
    const polygon = there.flatMap((cubic) => flatten([cubic], px(0.01 / pose.factor)));
    for (const point of points) {
      const [x, y] = toPhoto(point, frame);
      const nearest = Math.min(
        ...polygon.map((other, index) =>
          fromSegment([x, y], polygon.at(index - 1) ?? other, other),
        ),
      );
      expect(nearest).toBeLessThan(0.02 / pose.factor);
    }
    expectClose(outlineArea(onPhoto) * pose.factor ** 2, outlineArea(drawn), 1e-3);
  });
});

describe("mapOutline onto the photo of a turned head", () => {
  const photo = photograph(turnedHead(syntheticHead(), 9), {
    factor: 0.1,
    tilt: 8,
    at: [1000, 900],
  });
  const frame = turnToFront(photo, scaleFromReference(px([0, 0]), px([500, 0]), mm(50)));

  it.each([0.5, 0.01, 0.0001])("strays by no more than %s px", (error) => {
    const onPhoto = mapOutline(drawn, (point) => toPhoto(point, frame), px(error));
    const fine = outlinePath(onPhoto).flatMap((cubic) => flatten([cubic], px(error / 50)));
    for (const cubic of outlinePath(drawn)) {
      for (let part = 0; part <= 40; part += 1) {
        const [x, y] = toPhoto(pointOnCubic(cubic, part / 40), frame);
        const nearest = Math.min(
          ...fine.map((other, index) => fromSegment([x, y], fine.at(index - 1) ?? other, other)),
        );
        expect(nearest).toBeLessThan(1.1 * error);
      }
    }
  });

  it("needs more than the images of the control points", () => {
    const byControls = mapPath(outlinePath(drawn), (point) => {
      const [x, y] = toPhoto(point, frame);
      return flatPoint<"px">(x, y);
    });
    const fine = byControls.flatMap((cubic) => flatten([cubic], px(0.001)));
    const strays = outlinePath(drawn).map((cubic) => {
      const [x, y] = toPhoto(pointOnCubic(cubic, 0.5), frame);
      return Math.min(
        ...fine.map((other, index) => fromSegment([x, y], fine.at(index - 1) ?? other, other)),
      );
    });
    expect(Math.max(...strays)).toBeGreaterThan(0.05);
  });
});

describe("outlineBorders", () => {
  it("runs from start to tail end", () => {
    const { upper, lower } = outlineBorders(drawn, mm(0.01));
    expect([upper[0], upper.at(-1)]).toEqual([drawn.upper[0]?.[0], dots.tailEnd]);
    expectClose([lower[0], lower.at(-1)], [drawn.lower[0]?.[0], dots.tailEnd], 1e-12);
  });
});

function fromSegment(
  point: readonly number[],
  from: readonly number[],
  to: readonly number[],
): number {
  const [x = 0, y = 0] = [0, 1].map((axis) => (to[axis] ?? 0) - (from[axis] ?? 0));
  const [pointX = 0, pointY = 0] = [0, 1].map((axis) => (point[axis] ?? 0) - (from[axis] ?? 0));
  const size = x * x + y * y;
  const foot = size === 0 ? 0 : Math.min(Math.max((pointX * x + pointY * y) / size, 0), 1);
  return Math.hypot(pointX - foot * x, pointY - foot * y);
}

const plan = outline(
  completeDots({ upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) }),
);

describe("overlapOutlines", () => {
  it("finds nothing to do where hair and plan are one", () => {
    expectClose(
      overlapOutlines(plan, plan),
      { shared: outlineArea(plan), hairOutside: 0, skinInside: 0 },
      1e-9,
    );
  });

  it("finds nothing shared where they lie apart", () => {
    const far = mapOutline(plan, ([x, y]) => mm([x, y + 40]));
    const area = outlineArea(plan);
    expectClose(
      overlapOutlines(far, plan),
      { shared: 0, hairOutside: area, skinInside: area },
      1e-9,
    );
  });

  it("raised by d, lays bare d times its width on either side", () => {
    // Where both borders are graphs, a rise of d less than the thickness swaps ∫ d dx.
    const raised = mapOutline(plan, ([x, y]) => mm([x, y + 0.5]));
    const { hairOutside, skinInside } = overlapOutlines(raised, plan);
    expectClose(hairOutside, skinInside, 1e-6);
    // All of the 45 mm but the stretch at the tail where the brow is thinner than the rise.
    expect(hairOutside).toBeGreaterThan(0.5 * 43);
    expect(hairOutside).toBeLessThan(0.5 * 45);
  });

  it.each([0, Number.NaN])("refuses an error of %s", (error) => {
    expect(refusal(() => overlapOutlines(plan, plan, mm(error))).detail.field).toBe("error");
  });

  test.prop([anyBrow(), anyBetween(-3, 3)])("divides both areas", (brow, lift) => {
    const { dots } = naturalDots(brow);
    if (dots.upperArch === undefined) return;
    const drawn = outline(completeDots({ ...dots, upperArch: dots.upperArch }));
    const planned = mapOutline(drawn, ([x, y]) => mm([x, y + lift]));
    const natural = naturalOutline(brow);
    const { shared, hairOutside, skinInside } = overlapOutlines(planned, natural);
    expectClose(shared + hairOutside, outlineArea(natural), 1e-9);
    expectClose(shared + skinInside, outlineArea(planned), 1e-9);
    for (const area of [shared, hairOutside, skinInside]) expect(area).toBeGreaterThan(-1e-9);
  });
});
