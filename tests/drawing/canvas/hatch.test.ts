import { describe, expect, it } from "vitest";
import type { Spot } from "../../../src/drawing/canvas/box.js";
import { hatch } from "../../../src/drawing/canvas/hatch.js";
import { expectClose } from "../../support/close.js";

const square = (x: number, y: number, size: number): readonly Spot[] => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

const level = { direction: [1, 0] as Spot, apart: 1 };

describe("hatch", () => {
  it("strokes a square from edge to edge, on the same lines wherever it lies", () => {
    const strokes = hatch(square(0.5, 0.5, 3), [], level);
    expectClose(
      strokes.map(({ from, to }) => [from, to]),
      [1, 2, 3].map((y) => [
        [0.5, y],
        [3.5, y],
      ]),
      1e-12,
    );
  });

  it("leaves out what another outline covers", () => {
    const strokes = hatch(square(0.5, 0.5, 3), square(1.5, 1.5, 1), level);
    const middle = strokes.filter(({ from }) => Math.abs(from[1] - 2) < 1e-9);
    expectClose(
      middle.map(({ from, to }) => [from[0], to[0]]),
      [
        [0.5, 1.5],
        [2.5, 3.5],
      ],
      1e-12,
    );
    expect(hatch(square(1, 1, 2), square(0, 0, 9), level)).toEqual([]);
  });

  it("covers as much as its surface, leaning either way", () => {
    for (const lean of [1, -1]) {
      const direction: Spot = [Math.SQRT1_2, lean * Math.SQRT1_2];
      const strokes = hatch(square(0, 0, 10), square(5, 5, 10), { direction, apart: 0.05 });
      const drawn = strokes.reduce(
        (sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1]),
        0,
      );
      expectClose(drawn * 0.05, 75, 0.2);
    }
  });

  it("does without specks, and without a surface", () => {
    expect(hatch(square(0.5, 0.95, 0.1), [], level)).toEqual([]);
    expect(hatch([], [], level)).toEqual([]);
  });
});
