import {
  type Face,
  type FaceSide,
  IRIS_WIDTH,
  measured,
  mm,
  px,
  scaleFromIris,
} from "brow-geometry";
import { type LandmarkSource } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";

const side = (width: number, at: number): FaceSide<"px"> => ({
  limbusMedial: px([at, 500]),
  limbusLateral: px([at + width, 500]),
});
const faceWith = (right: number, left: number): Face<"px"> => ({
  right: side(-right, 460),
  left: side(left, 640),
  midline: {},
});
const mesh: LandmarkSource = {
  markup: "mesh",
  uncertainty: { default: mm(1.3), landmarks: { limbusMedial: mm(0.5), limbusLateral: mm(0.5) } },
  ringFactor: measured(1.11, 0.03),
  depth: "estimated",
};
const codes = (face: Face<"px">, options = {}): readonly string[] =>
  scaleFromIris(face, options).notes.map(({ code }) => code);

/** What perspective may do, worked out by hand: √((15³ + 10³)/75)/√(400·1500). */
const PERSPECTIVE = 0.0098601;

describe("scaleFromIris", () => {
  it("takes the iris as 11.71 ± 0.42 mm wide (Rüfer, Schröder & Erb, Cornea 2005;24:259–261)", () => {
    expectClose(IRIS_WIDTH, { value: 11.71, u: 0.42 }, 0);
    const scale = scaleFromIris(faceWith(58.55, 58.55), { placement: px(0) });
    expectClose(scale.factor, 0.2, 1e-12);
    expectClose(scale.u / scale.factor, Math.hypot(0.42 / 11.71, PERSPECTIVE), 1e-6);
    expect(scale.source).toBe("iris");
  });

  it("reads 4.18 % long where 12.2 stands for 11.71 (derived in facts)", () => {
    const published = scaleFromIris(faceWith(60, 60));
    const rounder = scaleFromIris(faceWith(60, 60), { width: measured(mm(12.2), mm(0)) });
    expectClose(rounder.factor / published.factor, 1.0418, 5e-5);
  });

  it("measures a tilted iris along its own width", () => {
    const tilted: FaceSide<"px"> = { limbusMedial: px([0, 0]), limbusLateral: px([30, 40]) };
    expectClose(scaleFromIris({ right: tilted, left: {}, midline: {} }).factor, 11.71 / 50, 1e-12);
  });

  it("corrects how much too wide the source draws the ring, with its uncertainty", () => {
    const honest = scaleFromIris(faceWith(60, 60), { placement: px(0) });
    const face = { ...faceWith(60, 60), source: mesh };
    const drawn = scaleFromIris(face, { placement: px(0) });
    expectClose(drawn.factor / honest.factor, 1.11, 1e-12);
    expectClose(
      (drawn.u / drawn.factor) ** 2 - (honest.u / honest.factor) ** 2,
      (0.03 / 1.11) ** 2,
      1e-12,
    );
    expect(codes(face)).toContain("ring-factor");
    expect(codes(faceWith(60, 60))).not.toContain("ring-factor");
    expectClose(
      scaleFromIris(face, { ringFactor: measured(1, 0), placement: px(0) }).factor,
      honest.factor,
      1e-12,
    );
  });

  it("averages the placement of two irises, and says when there is one", () => {
    const known = { width: measured(mm(11.71), mm(0)), placement: px(1) };
    const placementOf = (face: Face<"px">): number => {
      const { u, factor } = scaleFromIris(face, known);
      return Math.sqrt((u / factor) ** 2 - PERSPECTIVE ** 2);
    };
    const both = faceWith(60, 60);
    const one: Face<"px"> = { ...both, left: { limbusMedial: px([640, 500]) } };
    expectClose(placementOf(both), 1 / 60, 1e-6);
    expectClose(placementOf(one), Math.SQRT2 / 60, 1e-6);
    expect(scaleFromIris(one).notes.find(({ code }) => code === "one-iris")?.values).toEqual({
      side: "right",
    });
  });

  it("takes the placement from the face's own source, a careful hand's 0.26 mm without one", () => {
    const known = { width: measured(mm(10), mm(0)), ringFactor: measured(1, 0) };
    const placementOf = (face: Face<"px">): number => {
      const { u, factor } = scaleFromIris(face, known);
      return Math.sqrt((u / factor) ** 2 - PERSPECTIVE ** 2);
    };
    expectClose(placementOf(faceWith(60, 60)), 0.026, 1e-6);
    expectClose(placementOf({ ...faceWith(60, 60), source: mesh }), 0.05, 1e-6);
  });

  it("says when the irises differ, and lets the difference count", () => {
    const options = { placement: px(0.5), width: measured(mm(11.71), mm(0)) };
    const { notes, u, factor } = scaleFromIris(faceWith(57, 63), options);
    expect(notes.find(({ code }) => code === "irises-differ")?.values).toEqual({
      right: 57,
      left: 63,
    });
    expectClose(factor, 11.71 / 60, 1e-12);
    expectClose(Math.sqrt((u / factor) ** 2 - PERSPECTIVE ** 2), 3 / 60, 1e-5);
    expect(codes(faceWith(59.5, 60.5), options)).not.toContain("irises-differ");
  });

  describe("perspective", () => {
    it("says what it may cost where nobody knows the distance (vectors: Camera)", () => {
      const { notes } = scaleFromIris(faceWith(60, 60));
      const values = notes.find(({ code }) => code === "perspective-unknown")?.values;
      expectClose(values, { distance: 400, start: 3.9, tail: 2.4 }, 0.05);
    });

    it("is left to the face space where the distance is known", () => {
      const known = { width: measured(mm(11.71), mm(0)), placement: px(0) };
      const cameraDistance = measured(mm(400), mm(20));
      const scale = scaleFromIris(faceWith(60, 60), { ...known, cameraDistance });
      expectClose([scale.factor, scale.u], [11.71 / 60, 0], 1e-12);
      expect(scale.cameraDistance).toEqual(cameraDistance);
      const codesOf = scale.notes.map(({ code }) => code);
      expect(codesOf).toContain("perspective-corrected");
      expect(codesOf).not.toContain("perspective-unknown");
    });
  });

  it.each([
    ["no iris", { right: {}, left: {}, midline: {} }, {}, "limbusMedial, limbusLateral is missing"],
    ["an iris without width", faceWith(0, 0), {}, "needs a stretch"],
    ["an iris lost in its uncertainty", faceWith(4, 4), { placement: px(1) }, "needs a stretch"],
    ["NaN", faceWith(Number.NaN, 60), {}, "right.limbusLateral is [NaN, 500]"],
    ["a width of 0", faceWith(60, 60), { width: { value: mm(0), u: mm(0) } }, "width is 0"],
    ["no distance", faceWith(60, 60), { cameraDistance: measured(mm(0), mm(0)) }, "cameraDistance"],
  ])("refuses %s", (_, face, options, message) => {
    expect(() => scaleFromIris(face, options)).toThrow(message);
  });
});
