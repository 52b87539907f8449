import { test } from "@fast-check/vitest";
import { type FlatPoint, mm } from "brow-geometry";
import { type Cubic } from "brow-geometry/geometry";
import {
  mapPath,
  mapPathWithin,
  pathLength,
  pointOnCubic,
  straightCubic,
} from "../../../src/geometry/internal.js";
import { describe, expect, it } from "vitest";
import { anyBetween, anyFlatPoint } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const line = [straightCubic(mm([1, 0]), mm([1, Math.PI / 2]))];
/** Distance and angle as a place: lines of one distance become circles. */
const polar = ([distance, angle]: FlatPoint<"mm">): FlatPoint<"mm"> =>
  mm([distance * Math.cos(angle), distance * Math.sin(angle)]);

describe("mapPathWithin", () => {
  it.each([0.1, 1e-3, 1e-6])("draws a quarter of a circle to %s", (error) => {
    const path = mapPathWithin(line, polar, mm(error));
    for (const cubic of path) {
      for (let part = 0; part <= 20; part += 1) {
        const [x, y] = pointOnCubic(cubic, part / 20);
        expect(Math.abs(Math.hypot(x, y) - 1)).toBeLessThan(1.1 * error);
      }
    }
    expectClose(path.at(-1)?.[3], [0, 1], 1e-12);
  });

  it("takes few pieces: each halving is worth sixteen times the error", () => {
    expect(mapPathWithin(line, polar, mm(0.01))).toHaveLength(1);
    expect(mapPathWithin(line, polar, mm(1e-6)).length).toBeLessThanOrEqual(16);
    expectClose(pathLength(mapPathWithin(line, polar, mm(1e-8))), Math.PI / 2, 1e-7);
  });

  it("joins its pieces end to end", () => {
    const path = mapPathWithin(line, polar, mm(1e-5));
    path.slice(1).forEach(([from], index) => expect(from).toEqual(path[index]?.[3]));
  });

  it("comes to an end at a kink", () => {
    const kinked = ([x, y]: FlatPoint<"mm">): FlatPoint<"mm"> => mm([x, Math.abs(y - 1)]);
    const path = mapPathWithin(line, kinked, mm(1e-9));
    expect(path.length).toBeLessThan(100);
    expectClose(pathLength(path), Math.PI / 2, 1e-5);
  });

  test.prop([
    anyFlatPoint<"mm">(50),
    anyFlatPoint<"mm">(50),
    anyFlatPoint<"mm">(50),
    anyFlatPoint<"mm">(50),
    anyBetween(-2, 2),
  ])("is the images of the control points where straight stays straight", (...given) => {
    const [from, leaving, arriving, to, shear] = given;
    const path: readonly Cubic<"mm">[] = [[from, leaving, arriving, to]];
    const map = ([x, y]: FlatPoint<"mm">): FlatPoint<"mm"> => mm([3 - x + shear * y, 2 * y + 1]);
    expectClose(mapPathWithin(path, map, mm(1e-6)), mapPath(path, map), 1e-9);
  });

  it.each([0, -1, Number.NaN])("refuses an error of %s", (error) => {
    expect(refusal(() => mapPathWithin(line, polar, mm(error))).detail.field).toBe("error");
  });
});
