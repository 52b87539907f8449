import { fc, test } from "@fast-check/vitest";
import { measured, mm, px, scaleFromReference, toMillimetres } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";

describe("scaleFromReference", () => {
  it("divides millimetres by pixels", () => {
    const scale = scaleFromReference(px([0, 0]), px([300, -400]), mm(50));
    expectClose(scale.factor, 0.1, 1e-15);
    expect(scale).toMatchObject({ from: "px", to: "mm", source: "reference", notes: [] });
  });

  it("combines the uncertainties of length and ends (closed form of vectors)", () => {
    // Reference 11.7 mm (u 0.5) over 94 px (u 1), each end 1/√2 px; a feature of 210 px (u 1).
    const scale = scaleFromReference(px([0, 0]), px([94, 0]), mm(11.7), {
      u: mm(0.5),
      placement: px(Math.SQRT1_2),
    });
    const feature = toMillimetres(px(210), scale);
    expectClose(feature, 26.13829787234, 1e-12);
    expectClose(Math.hypot(210 * scale.u, 1 * scale.factor), 1.157821269588, 1e-12);
  });

  it("takes a careful hand's 0.26 mm for each end where nothing is said", () => {
    const scale = scaleFromReference(px([0, 0]), px([400, 0]), mm(50));
    expectClose(scale.u / scale.factor, (Math.SQRT2 * 0.26) / 50, 1e-12);
  });

  describe("nearer to the camera than what is measured (pinhole, closed form)", () => {
    // 10 mm at 400 mm: the feature reads 2.5 % short, so lengths are divided by 0.975.
    const depth = {
      nearer: measured(mm(10), mm(2)),
      cameraDistance: measured(mm(400), mm(20)),
    };
    const flat = scaleFromReference(px([0, 0]), px([400, 0]), mm(50), { placement: px(0) });
    const deep = scaleFromReference(px([0, 0]), px([400, 0]), mm(50), { placement: px(0), depth });

    it("divides by 1 − nearer/distance, and says so", () => {
      expectClose(deep.factor, flat.factor / 0.975, 1e-15);
      expect(deep.notes.map(({ code }) => code)).toEqual(["reference-off-plane"]);
    });

    it("carries the uncertainty of both distances", () => {
      const ofNearer = 2 / 400 / 0.975;
      const ofDistance = (10 * 20) / 400 ** 2 / 0.975;
      expectClose(deep.u / deep.factor, Math.hypot(ofNearer, ofDistance), 1e-12);
    });

    it("refuses a reference behind the camera", () => {
      const behind = { ...depth, nearer: measured(mm(400), mm(1)) };
      expect(() => scaleFromReference(px([0, 0]), px([400, 0]), mm(50), { depth: behind })).toThrow(
        "depth.nearer is 400; needs less than the camera's distance, 400",
      );
    });
  });

  test.prop([
    fc.double({ min: 0.1, max: 20, noNaN: true }),
    fc.double({ min: 10, max: 100, noNaN: true }),
  ])("scales with the photo", (zoom, length) => {
    const once = scaleFromReference(px([3, 4]), px([40, 90]), mm(length));
    const zoomed = scaleFromReference(
      px([3 * zoom, 4 * zoom]),
      px([40 * zoom, 90 * zoom]),
      mm(length),
    );
    expectClose(zoomed.factor * zoom, once.factor, 1e-9);
    expectClose(zoomed.u * zoom, once.u, 1e-9);
  });

  it.each([
    ["NaN in a point", [Number.NaN, 0], [1, 0], 50, "from is [NaN, 0]"],
    ["a length of 0", [0, 0], [100, 0], 0, "length is 0; needs more than 0"],
    ["a negative length", [0, 0], [100, 0], -3, "length is -3; needs more than 0"],
    ["one point twice", [5, 5], [5, 5], 50, "to is [5, 5]; needs a stretch"],
    ["ends within their uncertainty", [0, 0], [100, 0], 1, "to is [100, 0]; needs a stretch"],
  ] as const)("refuses %s", (_, from, to, length, message) => {
    expect(() => scaleFromReference(px(from), px(to), mm(length))).toThrow(message);
  });

  it("refuses a negative uncertainty", () => {
    expect(() =>
      scaleFromReference(px([0, 0]), px([100, 0]), mm(50), { placement: px(-1) }),
    ).toThrow("u is ");
  });
});
