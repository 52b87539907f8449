import { fc, test } from "@fast-check/vitest";
import { type FlatPoint, mm, naturalDots, type NaturalArch, type Polyline } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { hermiteAt } from "../../src/geometry/internal.js";
import { archPlace } from "../../src/proportions/arch-place.js";
import { upperBorder } from "../../src/proportions/upper-border.js";
import { anyBetween, anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { syntheticFace } from "../support/synthetic-face.js";

/** A border 45 mm long, from its height over the chord at shares of 0…1. */
function borderOf(height: (share: number) => number, count: number): Polyline<"mm"> {
  return Array.from({ length: count }, (_, index) => {
    const share = index / (count - 1);
    return flatPoint<"mm">(15 + 45 * share, 20 + height(share));
  });
}

function turned(border: Polyline<"mm">, degrees: number): Polyline<"mm"> {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return border.map(([x, y]) => flatPoint(cos * x - sin * y, sin * x + cos * y));
}

function archOf(upper: Polyline<"mm">, u = 0.26): NaturalArch {
  return naturalDots({ upper }, { u: mm(u) }).arch;
}

function placeOf(upper: Polyline<"mm">, u = 0.26): FlatPoint<"mm"> {
  const arch = archOf(upper, u);
  return arch.kind === "flat" ? expect.fail("the brow was taken as flat") : arch.at;
}

function placeU(upper: Polyline<"mm">, u: number): number {
  const arch = archOf(upper, u);
  return arch.kind === "flat" ? expect.fail("the brow was taken as flat") : arch.u;
}

/** What stands beside a part in the root of a sum of squares. */
function beside(whole: number, part: number): number {
  return Math.sqrt(whole * whole - part * part);
}

/** A border with errors of its points, normal ones of standard deviation `u`, always the same. */
function* withErrors(border: Polyline<"mm">, u: number, count: number): Generator<Polyline<"mm">> {
  const uniform = fc
    .sample(fc.noBias(fc.integer({ min: 1, max: 2 ** 31 })), {
      seed: 1,
      numRuns: 4 * border.length * count,
    })
    .map((whole) => whole / 2 ** 31);
  let next = 0;
  const normal = (): number => {
    const [one = 0.5, other = 0.5] = uniform.slice(next, (next += 2));
    return u * Math.sqrt(-2 * Math.log(one)) * Math.cos(2 * Math.PI * other);
  };
  for (let index = 0; index < count; index += 1) {
    yield border.map(([x, y]) => flatPoint(x + normal(), y + normal()));
  }
}

function spreadOf(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const square = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(square / (values.length - 1));
}

/** Peaks at 1/√3 of the chord, where its slope 1 − 3t² is 0. */
const cubic = (share: number): number => 15 * (share - share ** 3);
const cubicPlace = 15 + 45 / Math.sqrt(3);
const cubicRise = 10 / Math.sqrt(3);

describe("natural arch", () => {
  it.each([4, 5, 6, 7, 8, 10, 15, 40])(
    "finds the top of a cubic border given as %s points",
    (count) => {
      const arch = archOf(borderOf(cubic, count));
      if (arch.kind === "flat") expect.fail("flat");
      expectClose(arch.at, [cubicPlace, 20 + cubicRise], count < 6 ? 0.8 : 0.25);
      expectClose(arch.rise.value, cubicRise, 0.15);
    },
  );

  it("finds the middle of a parabola and of a half sine wave exactly, by symmetry", () => {
    for (const count of [5, 9, 20]) {
      expectClose(placeOf(borderOf((share) => 24 * share * (1 - share), count))[0], 37.5, 1e-6);
      expectClose(
        placeOf(borderOf((share) => 6 * Math.sin(Math.PI * share), count))[0],
        37.5,
        1e-6,
      );
    }
  });

  it("is the farthest point from the chord, not the highest", () => {
    // The same border with its tail end 9 mm higher: farthest stays, highest moves outwards.
    const rising = borderOf((share) => cubic(share) + 9 * share, 15);
    expectClose(placeOf(rising)[0], cubicPlace, 0.6);
    const highest = 15 + 45 * Math.sqrt((15 + 9) / 45);
    expect(highest - cubicPlace).toBeGreaterThan(6);
  });

  it("takes three points as drawn", () => {
    const arch = archOf(
      mm([
        [15, 20],
        [40, 27],
        [58, 18],
      ]),
      0.2,
    );
    if (arch.kind === "flat") expect.fail("flat");
    expectClose([arch.kind, arch.at, arch.u], ["peak", [40, 27], 0.2], 1e-12);
  });

  it.each([
    [
      "two points",
      mm([
        [15, 20],
        [60, 20],
      ]),
    ],
    [
      "three points on a line",
      mm([
        [15, 20],
        [40, 20],
        [60, 20],
      ]),
    ],
    ["a rise under 1 mm", borderOf((share) => 4 * 0.9 * share * (1 - share), 9)],
    ["a sagging border", borderOf((share) => -20 * share * (1 - share), 9)],
    [
      "three points that sag",
      mm([
        [15, 20],
        [40, 15],
        [60, 20],
      ]),
    ],
  ])("calls %s flat", (_, upper) => {
    expect(archOf(upper).kind).toBe("flat");
  });

  it("calls a rise flat that its uncertainty could have made", () => {
    const low = borderOf((share) => 4 * 1.6 * share * (1 - share), 7);
    expect(archOf(low, 0.05).kind).toBe("peak");
    expect(archOf(low, 0.25).kind).toBe("undetermined");
    expect(archOf(low, 0.9).kind).toBe("flat");
  });

  it("does not determine an arch whose place is less certain than 5 mm", () => {
    const border = borderOf(cubic, 7);
    const [sure, unsure] = [archOf(border, 0.2), archOf(border, 1.2)];
    expect(sure.kind).toBe("peak");
    expect(unsure.kind).toBe("undetermined");
    if (unsure.kind === "flat" || sure.kind === "flat") expect.fail("flat");
    expect(unsure.at).toEqual(sure.at);
  });

  it("has an uncertainty of its own, to which small errors of the points add in squares", () => {
    const border = borderOf(cubic, 7);
    const [own, once, sixfold] = [placeU(border, 0), placeU(border, 1e-4), placeU(border, 6e-4)];
    expect(own).toBeGreaterThan(0.5);
    expectClose(beside(sixfold, own) / beside(once, own), 6, 1e-3);
  });

  it("is uncertain where points zigzag, whatever is said of them", () => {
    const zigzag = borderOf(cubic, 15).map(([x, y], index) =>
      flatPoint<"mm">(x, y + (index % 2) * 1.2),
    );
    expect(placeU(zigzag, 0)).toBeGreaterThan(0.5);
  });

  it("holds the farthest point of the library's own outlines", () => {
    // Exact places: the curve is a graph of cubics, looked at every hundredth of a millimetre.
    const shapes = fc.sample(
      fc.record({
        share: anyBetween(0.5, 0.75),
        rise: anyBetween(4, 9),
        tail: anyBetween(-5, 3),
        angularity: anyBetween(0, 0.6),
      }),
      { seed: 3, numRuns: 150 },
    );
    for (const count of [5, 7, 10, 20]) {
      const held = shapes.filter(({ share, rise, tail, angularity }) => {
        const dots = {
          upperStart: mm([0, 0]),
          upperArch: mm([48 * share, Math.max(share * tail, tail, 0) + rise]),
          tailEnd: mm([48, tail]),
        };
        const curve = upperBorder(dots, { angularity });
        const at = (x: number): FlatPoint<"mm"> => flatPoint(x, hermiteAt(curve, x));
        const heightAt = (x: number): number => hermiteAt(curve, x) - (x * tail) / 48;
        const places = Array.from({ length: 4801 }, (_, index) => index / 100);
        const truth = places.reduce((top, x) => (heightAt(x) > heightAt(top) ? x : top));
        const drawn = Array.from({ length: count }, (_, index) => at((48 * index) / (count - 1)));
        const arch = archOf(drawn, 0);
        return arch.kind !== "flat" && Math.abs(arch.at[0] - truth) <= 1.96 * arch.u;
      });
      expect(held.length / shapes.length).toBeGreaterThan(0.93);
    }
  });

  it("moves smoothly where two places are rivals", () => {
    // Level between 27 and 48 mm: one end of that stretch sinks while the other rises.
    const place = (lift: number): number =>
      placeOf(
        mm([
          [15, 20],
          [27, 26 + lift],
          [48, 26 - lift],
          [60, 20],
        ]),
      )[0];
    const places = Array.from({ length: 401 }, (_, index) => place((index - 200) / 400));
    expectClose(places[200], 37.5, 1e-9);
    places.slice(1).forEach((next, index) => {
      expect(Math.abs(next - (places[index] ?? Number.NaN))).toBeLessThan(0.1);
    });
  });

  it("wanders far less than the highest point, with errors and with tilt", () => {
    // The scatter of places over 200 hands with 0.26 mm each, and what 5° of tilt do to them.
    const border = borderOf(cubic, 12);
    const hands = [...withErrors(border, 0.26, 200)];
    const highest = (line: Polyline<"mm">): number =>
      line.reduce((top, point) => (point[1] > top[1] ? point : top))[0];
    const farthest = (line: Polyline<"mm">): number => placeOf(line)[0];
    expect(spreadOf(hands.map(highest))).toBeGreaterThan(2 * spreadOf(hands.map(farthest)));

    const back = (line: Polyline<"mm">, find: (line: Polyline<"mm">) => number): number => {
      const tilted = turned(line, 5);
      const x = find(tilted);
      const at = tilted.reduce((near, point) =>
        Math.abs(point[0] - x) < Math.abs(near[0] - x) ? point : near,
      );
      return turned([at], -5)[0]?.[0] ?? Number.NaN;
    };
    expect(Math.abs(back(border, highest) - highest(border))).toBeGreaterThan(4);
    expectClose(turned([placeOf(turned(border, 5))], -5)[0], placeOf(border), 1e-9);
  });

  it.each([
    [5, 0.26],
    [7, 0.26],
    [12, 0.26],
    [30, 0.26],
    [12, 0.5],
  ])("states the scatter of its place and rise: %s points with %s mm", (count, u) => {
    const border = borderOf((share) => cubic(share) * 1.2, count);
    const arches = [...withErrors(border, u, 400)].flatMap((line) => {
      const arch = archOf(line, u);
      return arch.kind === "flat" ? [] : [arch];
    });
    const stated = archOf(border, u);
    if (stated.kind === "flat") expect.fail("flat");
    const exact = archOf(border, 0);
    if (exact.kind === "flat") expect.fail("flat");
    const spread = spreadOf(arches.map(({ at }) => at[0]));
    const rises = spreadOf(arches.map(({ rise }) => rise.value));
    // Along the border and along x differ by next to nothing at the top.
    // What the method is off by itself stands beside it in u, and is no scatter.
    const scatter = beside(stated.u, exact.u);
    const riseScatter = beside(stated.rise.u, exact.rise.u);
    expect(spread / scatter).toBeGreaterThan(0.75);
    expect(spread / scatter).toBeLessThan(1.3);
    expect(rises / riseScatter).toBeGreaterThan(0.75);
    expect(rises / riseScatter).toBeLessThan(1.3);
  });

  it("rounds an angular border, and stays within 2.5 mm of its corner", () => {
    const angular = (share: number): number => (share < 2 / 3 ? 9 * share : 18 * (1 - share));
    for (const count of [7, 13, 25]) {
      expectClose(placeOf(borderOf(angular, count)), [45, 26], 2.5);
    }
  });

  test.prop([anyBrow(), anyBetween(-60, 60)])("turns with the brow", ({ upper }, degrees) => {
    const [still, moved] = [archOf(upper), archOf(turned(upper, degrees))];
    expect(moved.kind).toBe(still.kind);
    expectClose(moved.rise, still.rise, 1e-7);
    if (still.kind !== "flat" && moved.kind !== "flat") {
      expectClose(moved.at, turned([still.at], degrees)[0], 1e-6);
      expectClose(moved.u, still.u, 1e-6 * (1 + still.u));
    }
  });

  test.prop([anyBrow(), fc.array(anyBetween(0.05, 0.95), { minLength: 1, maxLength: 40 })])(
    "does not care for points added on its legs",
    ({ upper }, parts) => {
      const denser = upper.slice(1).flatMap((to, leg) => {
        const [fromX, fromY] = upper[leg] as FlatPoint<"mm">;
        const inner = parts
          .filter((_, index) => index % (upper.length - 1) === leg)
          .sort((one, other) => one - other)
          .filter((part, index, all) => index === 0 || part - (all[index - 1] ?? 0) > 1e-3);
        const added = inner.map((part) =>
          flatPoint<"mm">(fromX + part * (to[0] - fromX), fromY + part * (to[1] - fromY)),
        );
        return [...added, to];
      });
      const drawn = archPlace(upper);
      expectClose(archPlace([upper[0] as FlatPoint<"mm">, ...denser]), drawn, 1e-6);
    },
  );

  test.prop([anyBrow(), anyBetween(0.3, 3)])(
    "grows with the brow and its u",
    ({ upper }, times) => {
      const larger = upper.map(([x, y]) => flatPoint<"mm">(times * x, times * y));
      const [small, large] = [archOf(upper), archOf(larger, 0.26 * times)];
      expectClose(large.rise.value, times * small.rise.value, 1e-9 * (1 + times));
      if (small.kind === "flat" || large.kind === "flat") return;
      const [x, y] = small.at;
      expectClose(large.at, [times * x, times * y], 1e-6);
      expectClose(large.u, times * small.u, 1e-6 * (1 + large.u));
    },
  );

  test.prop([anyBrow()])("is mirrored with the brow", ({ upper }) => {
    const other = archOf(upper.map(([x, y]) => flatPoint<"mm">(-x, y)));
    const one = archOf(upper);
    if (one.kind === "flat" || other.kind === "flat") expect(other.kind).toBe(one.kind);
    else expectClose([-other.at[0], other.at[1], other.u], [one.at[0], one.at[1], one.u], 1e-9);
  });

  test.prop([anyBrow(), fc.nat(24)])("does not care for points drawn twice", ({ upper }, which) => {
    const index = which % upper.length;
    const twice = [...upper.slice(0, index + 1), ...upper.slice(index)];
    expect(archOf(twice)).toEqual(archOf(upper));
  });

  test.prop([anyBrow()])("lies between start and tail end, near the border", ({ upper }) => {
    const arch = archOf(upper);
    if (arch.kind === "flat") return;
    expect(arch.at[0]).toBeGreaterThan(upper[0]?.[0] ?? 0);
    expect(arch.at[0]).toBeLessThan(upper.at(-1)?.[0] ?? 0);
    const nearest = Math.min(...upper.map(([x, y]) => Math.hypot(x - arch.at[0], y - arch.at[1])));
    expect(nearest).toBeLessThan(45 / (upper.length - 1));
  });

  it("reads the invented face's arch where its points lie farthest from the chord", () => {
    const { upper } = syntheticFace().left.brow;
    // Distances from the chord: 4.93 at (30, 24.6), 6.76 at (38, 26), 6.69 at (44, 25.6).
    expect(placeOf(upper)[0]).toBeGreaterThan(38);
    expect(placeOf(upper)[0]).toBeLessThan(44);
  });
});
