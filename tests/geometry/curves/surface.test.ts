import { distance, spaceDistance } from "brow-geometry/geometry";
import { flatPoint } from "brow-geometry/units";
import { mm } from "brow-geometry";
import { lengthAlongSurface, liftOnto, type Surface } from "../../../src/geometry/internal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFlatPoint } from "../../support/arbitraries.js";

function cylinder(radius: number): Surface {
  const depth = (x: number): number => Math.sqrt(radius ** 2 - x * x);
  return { depth, rise: (x, _y, stepX) => (-x * stepX) / depth(x) };
}

function sphere(radius: number): Surface {
  const depth = (x: number, y: number): number => Math.sqrt(radius ** 2 - x * x - y * y);
  return { depth, rise: (x, y, stepX, stepY) => -(x * stepX + y * stepY) / depth(x, y) };
}

describe("length along a surface", () => {
  it("on a vertical cylinder is radius × angle", () => {
    const length = lengthAlongSurface(mm([40, 0]), mm([57, 0]), cylinder(76));
    expect(length).toBeCloseTo(76 * (Math.asin(57 / 76) - Math.asin(40 / 76)), 10);
    // A cylinder of radius 76 from 40 to 57: 17 as seen from the front, 22.3288 by tape.
    expect(length).toBeCloseTo(22.3288, 4);
  });

  it("on a cylinder rolls out: height and arc make a right angle", () => {
    // A straight sight line is no helix, so its tape is longer than the rolled-out straight line.
    const arc = 76 * (Math.asin(57 / 76) - Math.asin(40 / 76));
    const length = lengthAlongSurface(mm([40, 0]), mm([57, 8]), cylinder(76));
    expect(length).toBeGreaterThan(Math.hypot(arc, 8));
    expect(length).toBeCloseTo(Math.hypot(arc, 8), 0);
  });

  it("on a sphere, over a line at any distance from its centre, is an arc of a small circle", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        (aside, from, to, angle) => {
          const place = (along: number) =>
            flatPoint<"mm">(
              along * Math.cos(angle) - aside * Math.sin(angle),
              along * Math.sin(angle) + aside * Math.cos(angle),
            );
          const radius = Math.sqrt(100 ** 2 - aside ** 2);
          const arc = radius * Math.abs(Math.asin(to / radius) - Math.asin(from / radius));
          expect(lengthAlongSurface(place(from), place(to), sphere(100))).toBeCloseTo(arc, 8);
        },
      ),
    );
  });

  it("is at least the ruler's length, and that at least the photo's", () => {
    fc.assert(
      fc.property(anyFlatPoint<"mm">(50), anyFlatPoint<"mm">(50), (from, to) => {
        const along = lengthAlongSurface(from, to, sphere(100));
        const straight = spaceDistance(liftOnto(from, sphere(100)), liftOnto(to, sphere(100)));
        expect(along).toBeGreaterThanOrEqual(straight - 1e-9);
        expect(straight).toBeGreaterThanOrEqual(distance(from, to));
      }),
    );
  });

  it("replaces the depth that a point carries", () => {
    expect(liftOnto(mm([0, 0, 7]), sphere(100))).toEqual([0, 0, 100]);
  });
});
