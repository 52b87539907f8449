import { fc, test } from "@fast-check/vitest";
import { archAtShare, frontShare } from "brow-geometry/proportions";
import { lengthBetween, mm, type Skin } from "brow-geometry";
import { pointAlong } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { anyBetween, anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const flat: Skin = { kind: "flat" };
const modelled: Skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 };
const [start, tailEnd] = [mm([15, 20]), mm([60, 20])];

describe("archAtShare", () => {
  it("puts 30 mm of 45 in front", () => {
    // Two thirds and one third, about 30 and 15 mm: trade practice, no source.
    const place = archAtShare([start, tailEnd], start, tailEnd, flat, 2 / 3);
    expectClose(place, { at: [45, 20], along: 30, extended: false }, 1e-9);
  });

  it("lies nearer to the tail end in the photo, where the skin turns away", () => {
    // Two thirds of the chord's way along z = −x³/L², by ruler: the tail's millimetres are longer.
    const { at } = archAtShare([start, tailEnd], start, tailEnd, modelled, 2 / 3);
    const depth = (x: number): number => -(x ** 3) / 87.8 ** 2;
    const front = Math.hypot(at[0] - 15, depth(at[0]) - depth(15));
    const tail = Math.hypot(60 - at[0], depth(60) - depth(at[0]));
    expectClose(front / (front + tail), 2 / 3, 1e-9);
    expect(at[0]).toBeGreaterThan(46);
  });

  it("divides a brow whose start and tail end lie beside the hair", () => {
    const border = mm([
      [20, 20],
      [40, 26],
      [55, 20],
    ]);
    const place = archAtShare(border, start, tailEnd, flat, 0.6);
    const front = lengthBetween(start, place.at, flat);
    expectClose(frontShare(front, lengthBetween(place.at, tailEnd, flat)), 0.6, 1e-9);
    expectClose(pointAlong(border, place.along).at, place.at, 1e-9);
  });

  it.each([
    [0, "out-of-range", "share"],
    [1, "out-of-range", "share"],
    [1.2, "out-of-range", "share"],
    [Number.NaN, "not-finite", "share"],
  ])("refuses a share of %s", (share, code, field) => {
    const error = refusal(() => archAtShare([start, tailEnd], start, tailEnd, flat, share));
    expect(error.code).toBe(code);
    expect(error.detail).toMatchObject({ where: "archAtShare", field });
  });

  it("says so where the hair is nowhere near", () => {
    const border = mm([
      [15, 20],
      [18, 21],
    ]);
    expect(refusal(() => archAtShare(border, start, tailEnd, flat, 2 / 3)).code).toBe(
      "no-solution",
    );
    expect(refusal(() => archAtShare([start], start, tailEnd, flat, 2 / 3)).code).toBe(
      "wrong-count",
    );
  });

  test.prop([anyBrow(), anyBetween(0.4, 0.9), fc.constantFrom(flat, modelled)])(
    "gives the front its share, on the border",
    ({ upper }, share, skin) => {
      const [from = start, to = tailEnd] = [upper[0], upper.at(-1)];
      const place = archAtShare(upper, from, to, skin, share);
      expectClose(
        frontShare(lengthBetween(from, place.at, skin), lengthBetween(place.at, to, skin)),
        share,
        1e-9,
      );
      expectClose(pointAlong(upper, place.along).at, place.at, 1e-9);
    },
  );
});
