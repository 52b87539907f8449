import { fc, test } from "@fast-check/vitest";
import { fitRuler, measured, mm, px, scaleFromReference, scaleFromRuler } from "brow-geometry";
import { type RulerFit, type RulerMark } from "brow-geometry/calibration";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

/** Marks of a ruler whose edge runs from (x, y) in a direction, 8 px a millimetre. */
function marksAt(
  readings: readonly number[],
  place: (reading: number) => number = (reading) => 8 * reading,
  angle = 0.1,
): readonly RulerMark[] {
  return readings.map((reading) => ({
    at: px([500 + place(reading) * Math.cos(angle), 900 + place(reading) * Math.sin(angle)]),
    reading: mm(reading),
  }));
}
const codes = ({ scale }: RulerFit): readonly string[] => scale.notes.map(({ code }) => code);

describe("fitRuler", () => {
  it("finds scale and zero, though the readings neither start at zero nor run evenly", () => {
    const ruler = fitRuler(marksAt([12, 20, 25, 47]));
    expectClose(ruler.scale.factor, 0.125, 1e-12);
    expectClose(ruler.zero, [500, 900], 1e-9);
    expectClose(ruler.residuals, [0, 0, 0, 0], 1e-9);
    expectClose(ruler.offsets, [0, 0, 0, 0], 1e-9);
    expect(ruler.scale).toMatchObject({ source: "ruler", notes: [] });
    expect(ruler.rejected).toBeUndefined();
  });

  it("reads a ruler that runs the other way", () => {
    const ruler = fitRuler(marksAt([47, 25, 20, 12], (reading) => 700 - 8 * reading));
    expectClose(ruler.scale.factor, 0.125, 1e-12);
    expectClose(ruler.zero, [500 + 700 * Math.cos(0.1), 900 + 700 * Math.sin(0.1)], 1e-9);
  });

  it("is a reference where there are two marks", () => {
    const [from, to] = marksAt([10, 60]);
    if (from === undefined || to === undefined) return;
    const ruler = scaleFromRuler([from, to], { placement: px(2) });
    const reference = scaleFromReference(from.at, to.at, mm(50), { placement: px(2) });
    expectClose([ruler.factor, ruler.u], [reference.factor, reference.u], 1e-12);
  });

  it("gains from more marks: u is placement over the spread of the readings", () => {
    const { factor, u } = scaleFromRuler(marksAt([0, 10, 20, 30, 40]), { placement: px(2) });
    // √(20² + 10² + 0 + 10² + 20²) = √1000 mm of spread, 2 px of placement, 8 px a millimetre.
    expectClose(u / factor, 2 / 8 / Math.sqrt(1000), 1e-12);
  });

  it.each([
    ["by ten", [0, 10, 20, 40, 40.5]],
    ["in the middle", [0, 10, 25, 30, 40]],
    ["at the end", [0, 10, 20, 30, 90]],
    ["at the start", [-30, 10, 20, 30, 40]],
    ["by two", [0, 10, 20, 32, 40]],
  ])("names one mis-typed reading among five, %s", (_, typed) => {
    const truth = [0, 10, 20, 30, 40];
    const marks = marksAt(truth).map(({ at }, index) => ({ at, reading: mm(typed[index] ?? 0) }));
    const wrong = typed.findIndex((reading, index) => Math.abs(reading - (truth[index] ?? 0)) > 1);
    const ruler = fitRuler(marks, { placement: px(1) });
    expect(ruler.rejected).toBe(wrong);
    expectClose(ruler.scale.factor, 0.125, 0.002);
    const { values } = ruler.scale.notes.find(({ code }) => code === "reading-rejected") ?? {};
    expect(values?.["reading"]).toBe(typed[wrong]);
    expectClose(values?.["expected"], truth[wrong], 0.6);
    expectClose(ruler.residuals[wrong], (typed[wrong] ?? 0) - (truth[wrong] ?? 0), 0.6);
  });

  describe("receding from the camera", () => {
    // A ruler tilted so that it recedes by 0.5 mm a millimetre, its zero 500 mm from the camera.
    const receding = (reading: number): number => (8 * reading) / (1 + (0.5 * reading) / 500);
    const ruler = fitRuler(marksAt([0, 20, 40, 60, 80], receding), { placement: px(0.5) });

    it("is said, with the scale of the middle", () => {
      expect(codes(ruler)).toEqual(["ruler-recedes"]);
      // The derivative of the pinhole's projection at 40 mm: 8/(1 + 0.04)² px a millimetre.
      expectClose(ruler.scale.factor, 1.04 ** 2 / 8, 1e-3);
    });

    it("widens the uncertainty to hold both ends", () => {
      const level = fitRuler(marksAt([0, 20, 40, 60, 80]), { placement: px(0.5) });
      expect(codes(level)).toEqual([]);
      const ends = [1, 1.08 ** 2].map((times) => times / 8);
      expect(ruler.scale.u).toBeGreaterThan(level.scale.u * 3);
      for (const end of ends) {
        expect(Math.abs(end - ruler.scale.factor)).toBeLessThan(2 * ruler.scale.u);
      }
    });
  });

  it("widens where readings scatter more than their marks were placed", () => {
    const rough = marksAt(
      [0, 10, 20, 30, 40, 50],
      (reading) => 8 * reading + 12 * Math.sin(3 * reading),
    );
    const ruler = fitRuler(rough, { placement: px(1) });
    expect(codes(ruler)).toEqual(["readings-scatter"]);
    const calm = fitRuler(marksAt([0, 10, 20, 30, 40, 50]), { placement: px(1) });
    expect(ruler.scale.u).toBeGreaterThan(5 * calm.scale.u);
  });

  it("corrects for depth as a reference does", () => {
    const depth = { nearer: measured(mm(10), mm(1)), cameraDistance: measured(mm(400), mm(10)) };
    const { factor, cameraDistance } = scaleFromRuler(marksAt([0, 50]), { depth });
    expectClose(factor, 0.125 / 0.975, 1e-12);
    expect(cameraDistance).toEqual(depth.cameraDistance);
  });

  test.prop([
    fc.uniqueArray(fc.integer({ min: 0, max: 150 }), { minLength: 2, maxLength: 8 }),
    fc.double({ min: 2, max: 30, noNaN: true }),
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.integer({ min: -50, max: 50 }),
  ])(
    "does not care where zero is, how the photo lies, or in what order",
    (readings, pixels, angle, shift) => {
      fc.pre(Math.max(...readings) - Math.min(...readings) > 20);
      const marks = marksAt(readings, (reading) => pixels * reading, angle);
      const shifted = marks.map(({ at, reading }) => ({ at, reading: mm(reading + shift) }));
      const one = fitRuler(marks);
      const other = fitRuler([...shifted].reverse());
      expectClose(one.scale.factor, 1 / pixels, 1e-9);
      expectClose(other.scale.factor, 1 / pixels, 1e-9);
      expectClose(other.scale.u, one.scale.u, 1e-9);
    },
  );

  it.each([
    ["one mark", marksAt([10]), "wrong-count"],
    [
      "one reading twice",
      marksAt([10, 20]).map(({ at }) => ({ at, reading: mm(10) })),
      "inconsistent",
    ],
    ["one place twice", marksAt([10, 20], () => 80), "coincident-points"],
    ["NaN", marksAt([10, Number.NaN]), "not-finite"],
    ["marks within their placement", marksAt([10, 10.5]), "ill-conditioned"],
  ])("refuses %s", (_, marks, code) => {
    expect(refusal(() => fitRuler(marks)).code).toBe(code);
  });
});
