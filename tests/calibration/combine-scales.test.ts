import { fc, test } from "@fast-check/vitest";
import { type Face, measured, mm, px, say, type Scale, scaleFromIris } from "brow-geometry";
import { combineScales } from "brow-geometry/calibration";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const scaleOf = (factor: number, u: number): Scale => ({
  from: "px",
  to: "mm",
  factor,
  u,
  source: "reference",
  notes: [],
});
const codes = ({ notes }: Scale): readonly string[] => notes.map(({ code }) => code);

describe("combineScales", () => {
  it("weighs by 1/u² and narrows where sources agree", () => {
    const scale = combineScales([scaleOf(0.125, 0.002), scaleOf(0.127, 0.001)]);
    // Weights 1 and 4: (0.125 + 4 · 0.127)/5, u = 0.002/√5.
    expectClose(scale.factor, 0.1266, 1e-12);
    expectClose(scale.u, 0.002 / Math.sqrt(5), 1e-12);
    expect(scale).toMatchObject({ source: "combined", notes: [] });
  });

  it("never hides a disagreement: u grows to hold the sources", () => {
    const scale = combineScales([scaleOf(0.12, 0.001), scaleOf(0.13, 0.001)]);
    // Each lies 0.005 from the mean, whose own u is 0.001/√2.
    expectClose(scale.factor, 0.125, 1e-12);
    expectClose(scale.u, Math.hypot(0.005, 0.001 / Math.SQRT2), 1e-12);
    expect(codes(scale)).toEqual(["sources-disagree"]);
    expect(scale.notes.map((note) => say(note))[0]).toContain(
      "reference 0.1200 ± 0.0010, reference 0.1300 ± 0.0010",
    );
  });

  it("keeps the notes of all sources", () => {
    const iris = scaleFromIris(faceWith(60));
    const scale = combineScales([scaleOf(iris.factor, iris.u / 10), iris]);
    expect(codes(scale)).toEqual(codes(iris));
    expect(scale.u).toBeLessThan(iris.u / 10);
  });

  it("lets a scale without uncertainty outweigh the others", () => {
    const scale = combineScales([scaleOf(0.125, 0), scaleOf(0.126, 0.001)]);
    expectClose([scale.factor, scale.u], [0.125, 0], 0);
  });

  it("keeps the camera's distance, which one photo has once, no surer than the best that is said", () => {
    const from = (value: number, u: number): Scale => ({
      ...scaleOf(0.125, 0.001),
      cameraDistance: measured(mm(value), mm(u)),
    });
    const distanceOf = (...scales: readonly Scale[]): unknown =>
      combineScales(scales).cameraDistance;
    expect(distanceOf(scaleOf(0.125, 0.001), scaleOf(0.125, 0.001))).toBeUndefined();
    expectClose(distanceOf(from(400, 20), scaleOf(0.125, 0.001)), { value: 400, u: 20 }, 1e-9);
    expectClose(distanceOf(from(400, 20), from(400, 20)), { value: 400, u: 20 }, 1e-9);
    // Each lies 5 mm from the mean.
    expectClose(
      distanceOf(from(400, 12), from(410, 12)),
      { value: 405, u: Math.hypot(12, 5) },
      1e-9,
    );
  });

  it("gives a single scale back", () => {
    expect(combineScales([scaleOf(0.125, 0.001)])).toEqual(scaleOf(0.125, 0.001));
  });

  test.prop([
    fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    fc.array(
      fc.tuple(
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.double({ min: 0.001, max: 0.01, noNaN: true }),
      ),
      {
        minLength: 1,
        maxLength: 5,
      },
    ),
  ])("of sources that agree is never wider than the best of them", (factor, sources) => {
    const scales = sources.map(([off, u]) => scaleOf(factor + off * u, u));
    const combined = combineScales(scales);
    expect(codes(combined)).toEqual([]);
    expect(combined.u).toBeLessThanOrEqual(Math.min(...scales.map(({ u }) => u)) * (1 + 1e-12));
  });

  test.prop([
    fc.double({ min: 0.1, max: 0.2, noNaN: true }),
    fc.double({ min: 0.1, max: 0.2, noNaN: true }),
    fc.double({ min: 0.0005, max: 0.005, noNaN: true }),
    fc.double({ min: 0.0005, max: 0.005, noNaN: true }),
  ])("of two covers both, agreeing or not", (one, other, oneU, otherU) => {
    const { factor, u } = combineScales([scaleOf(one, oneU), scaleOf(other, otherU)]);
    for (const [each, own] of [
      [one, oneU],
      [other, otherU],
    ] as const) {
      expect(Math.abs(each - factor)).toBeLessThanOrEqual(2 * Math.hypot(u, own));
    }
  });

  it.each([
    ["nothing", [], "wrong-count"],
    ["a factor of 0", [scaleOf(0, 1)], "out-of-range"],
    ["a negative u", [scaleOf(1, -1), scaleOf(1, 1)], "out-of-range"],
    ["two exact scales that differ", [scaleOf(1, 0), scaleOf(1.1, 0)], "inconsistent"],
    [
      "the population's iris twice",
      [scaleFromIris(faceWith(60)), scaleFromIris(faceWith(61))],
      "inconsistent",
    ],
  ])("refuses %s", (_, scales, code) => {
    expect(refusal(() => combineScales(scales)).code).toBe(code);
  });
});

function faceWith(width: number): Face<"px"> {
  return {
    right: { limbusMedial: px([460, 500]), limbusLateral: px([460 - width, 500]) },
    left: { limbusMedial: px([640, 500]), limbusLateral: px([640 + width, 500]) },
    midline: {},
  };
}
