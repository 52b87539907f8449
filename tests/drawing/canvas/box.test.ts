import { test } from "@fast-check/vitest";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxAround, clippedTo, grown, isWithin, overlap } from "../../../src/drawing/canvas/box.js";

const box = { x: 10, y: 20, width: 30, height: 40 };

describe("boxes", () => {
  it("hold their spots", () => {
    expect(
      boxAround([
        [10, 60],
        [40, 20],
        [12, 33],
      ]),
    ).toEqual(box);
    expect(grown(box, 5)).toEqual({ x: 5, y: 15, width: 40, height: 50 });
    expect(isWithin(box, grown(box, 5))).toBe(true);
    expect(isWithin(grown(box, 5), box)).toBe(false);
  });

  it("that share only an edge do not overlap", () => {
    expect(overlap(box, { ...box, x: 40 })).toBe(false);
    expect(overlap(box, { ...box, x: 39 })).toBe(true);
    expect(overlap(box, { ...box, y: 60 })).toBe(false);
  });
});

describe("clippedTo", () => {
  it.each([
    ["through", [0, 40], [100, 40], { from: [10, 40], to: [40, 40] }],
    ["inside", [15, 30], [20, 50], { from: [15, 30], to: [20, 50] }],
    ["into", [25, 0], [25, 30], { from: [25, 20], to: [25, 30] }],
    ["beside", [0, 0], [100, 0], undefined],
    ["short of it", [0, 40], [9, 40], undefined],
    ["past a corner", [0, 50], [20, 90], undefined],
  ] as const)("keeps what lies inside of a stretch that runs %s", (_, from, to, expected) => {
    expect(clippedTo(box, { from, to })).toEqual(expected);
  });

  const anySpot = fc.tuple(fc.integer({ min: -50, max: 100 }), fc.integer({ min: -50, max: 100 }));

  test.prop([anySpot, anySpot, fc.double({ min: 0, max: 1, noNaN: true })])(
    "agrees with asking every point of the stretch",
    (from, to, share) => {
      const clipped = clippedTo(box, { from, to });
      const [x, y] = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
      const inside = x > 10 && x < 40 && y > 20 && y < 60;
      if (inside) {
        const around = grown(boxAround([clipped?.from ?? [0, 0], clipped?.to ?? [0, 0]]), 1e-9);
        expect(isWithin({ x, y, width: 0, height: 0 }, around)).toBe(true);
      }
    },
  );
});
