import { bestMirrorLine, type MirrorUnit, px } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";

describe("bestMirrorLine", () => {
  // Synthetic deviated nose; references by SciPy, NumPy and R: the true line passes x = 500 at
  // y = 600, total least squares gives 504.3496, a Tukey bisquare 500.0314.
  const nose = (spreadOfEach: number): readonly MirrorUnit<"px">[] =>
    [
      [489.4, 380],
      [491.2, 430],
      [492.95, 455],
      [495.5, 520],
      [502.3, 640],
      [505.1, 700],
      [507.8, 760],
      [511.2, 820],
      [518.5, 610],
      [527.5, 650],
    ].map(([x = 0, y = 0]) => ({ one: px([x, y]), weight: 1, spread: px(spreadOfEach) }));

  it.each([
    [0.5, 500.0304],
    [1, 500.0268],
    [3, 500.0258],
  ])("keeps to the face beside a deviated nose, spread %s px", (spreadOfEach, expected) => {
    const { line } = bestMirrorLine(nose(spreadOfEach));
    const at600 =
      line.through[0] + ((600 - line.through[1]) * line.direction[0]) / line.direction[1];
    expectClose(at600, expected, 2e-4);
    expectClose(at600, 500, 0.1);
  });

  it("gives no weight to the two that deviate", () => {
    expect(bestMirrorLine(nose(1)).weights.slice(8)).toEqual([0, 0]);
  });

  it("follows the deviated nose when told not to be robust", () => {
    const { line, robust } = bestMirrorLine(nose(1), { robust: false });
    const at600 =
      line.through[0] + ((600 - line.through[1]) * line.direction[0]) / line.direction[1];
    expectClose(at600, 504.3496, 1e-4);
    expect(robust).toBe(false);
  });
});
