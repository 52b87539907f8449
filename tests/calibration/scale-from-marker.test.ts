import { fc, test } from "@fast-check/vitest";
import { measured, mm, type Polyline, px, type Scale, scaleFromReference } from "brow-geometry";
import { scaleFromMarker } from "brow-geometry/calibration";
import { propagateByMonteCarlo } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

/** Rim points of a sticker 80 px wide, tilted about an axis by an angle in degrees. */
function rimAt(angles: readonly number[], tilt = 0, axis = 0.4): Polyline<"px"> {
  const across = Math.cos((tilt * Math.PI) / 180);
  return angles.map((angle) => {
    const [x, y] = [40 * Math.cos(angle), 40 * across * Math.sin(angle)];
    return px([
      900 + x * Math.cos(axis) - y * Math.sin(axis),
      300 + x * Math.sin(axis) + y * Math.cos(axis),
    ]);
  });
}
const around = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => (2 * Math.PI * index) / count);
const codes = ({ notes }: Scale): readonly string[] => notes.map(({ code }) => code);

describe("scaleFromMarker", () => {
  it("takes two opposite points as a reference", () => {
    const rim = rimAt([0, Math.PI]);
    const scale = scaleFromMarker(rim, mm(10), { placement: px(1) });
    const [from = px([0, 0]), to = px([0, 0])] = rim;
    const reference = scaleFromReference(from, to, mm(10), { placement: px(1) });
    expectClose([scale.factor, scale.u], [reference.factor, reference.u], 1e-9);
    expect(scale.source).toBe("marker");
  });

  it("fits a circle to three or more", () => {
    expectClose(scaleFromMarker(rimAt([0, 1, 3]), mm(10)).factor, 0.125, 1e-12);
    expect(codes(scaleFromMarker(rimAt(around(12)), mm(10)))).toEqual([]);
  });

  it("gains from points all round: u of the radius is placement/√n", () => {
    const { factor, u } = scaleFromMarker(rimAt(around(16)), mm(10), { placement: px(1) });
    expectClose(u / factor, 1 / Math.sqrt(16) / 40, 1e-6);
  });

  it("knows less from a short arc", () => {
    const arc = scaleFromMarker(rimAt([0, 0.5, 1, 1.5]), mm(10), { placement: px(0.3) });
    const whole = scaleFromMarker(rimAt(around(4)), mm(10), { placement: px(0.3) });
    expect(arc.u).toBeGreaterThan(5 * whole.u);
  });

  it("carries the uncertainty of the diameter", () => {
    const { factor, u } = scaleFromMarker(rimAt(around(8)), mm(10), {
      u: mm(0.2),
      placement: px(1e-6),
    });
    expectClose(u / factor, 0.02, 1e-9);
  });

  describe("tilted", () => {
    it.each([15, 25, 40])("by %d° says so, and uses the longer axis", (tilt) => {
      const scale = scaleFromMarker(rimAt(around(8), tilt), mm(10), { placement: px(0.3) });
      expect(codes(scale)).toEqual(["marker-tilted"]);
      expectClose(scale.notes[0]?.values["tilt"], tilt, 1e-6);
      expectClose(scale.factor, 0.125, 1e-9);
    });

    it("is not claimed where placement explains it", () => {
      const scale = scaleFromMarker(rimAt(around(8), 8), mm(10), { placement: px(1) });
      expect(codes(scale)).toEqual([]);
    });

    it("does not show in four points, which then scatter", () => {
      const scale = scaleFromMarker(rimAt(around(4), 40), mm(10), { placement: px(0.3) });
      expect(codes(scale)).toEqual(["rim-scatters"]);
      expect(scale.u / scale.factor).toBeGreaterThan(0.05);
    });
  });

  it("states the scatter that draws of its points show", () => {
    const { u } = scaleFromMarker(rimAt(around(5)), mm(10), { placement: px(1) });
    const [a, b, c, d, e] = rimAt(around(5)).map((value) => ({ value, u: px(1) }));
    if (!a || !b || !c || !d || !e) return;
    const drawn = propagateByMonteCarlo(
      (points) => scaleFromMarker(Object.values(points), mm(10), { placement: px(3) }).factor,
      { a, b, c, d, e },
      { seed: 3, draws: 500 },
    );
    expectClose(drawn.u / u, 1, 0.1);
  });

  it("corrects for depth as a reference does", () => {
    const depth = { nearer: measured(mm(10), mm(0)), cameraDistance: measured(mm(400), mm(0)) };
    expectClose(scaleFromMarker(rimAt(around(8)), mm(10), { depth }).factor, 0.125 / 0.975, 1e-9);
  });

  test.prop([
    fc.double({ min: 0.05, max: 20, noNaN: true }),
    fc.double({ min: 5, max: 30, noNaN: true }),
    fc.integer({ min: 3, max: 12 }),
  ])("scales with photo and diameter", (zoom, diameter, count) => {
    const rim = rimAt(around(count)).map(([x, y]) => px([zoom * x, zoom * y]));
    expectClose(scaleFromMarker(rim, mm(diameter)).factor * zoom, diameter / 80, 1e-9);
  });

  it("refuses a placement without uncertainty", () => {
    const exact = (): unknown => scaleFromMarker(rimAt(around(5)), mm(10), { placement: px(0) });
    expect(refusal(exact).detail.field).toBe("placement");
  });

  it.each([
    ["one point", rimAt([0]), 10, "wrong-count"],
    [
      "points on a line",
      px([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
      10,
      "ill-conditioned",
    ],
    ["one point twice", rimAt([0, 0]), 10, "ill-conditioned"],
    ["no diameter", rimAt([0, 1, 3]), 0, "out-of-range"],
    [
      "NaN",
      px([
        [0, Number.NaN],
        [5, 5],
      ]),
      10,
      "not-finite",
    ],
    ["an arc too short to tell", rimAt([0, 0.05, 0.1]), 10, "ill-conditioned"],
  ])("refuses %s", (_, rim, diameter, code) => {
    expect(refusal(() => scaleFromMarker(rim, mm(diameter))).code).toBe(code);
  });
});
