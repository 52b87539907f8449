import { mm, planDots, type PlannableFace } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { plainFace } from "../../support/plain-face.js";
import { refusal } from "../../support/refusal.js";

const bare = plainFace([
  [15, 20],
  [38, 27],
  [50, 23],
  [57, 18],
]);

/** Three points of the upper lid a side: a corner, its middle 5 mm up, the other corner. */
const withLids: PlannableFace = {
  ...bare,
  right: {
    ...bare.right,
    upperLid: mm([
      [-16, 0],
      [-30, 5],
      [-44, 0],
    ]),
  },
  left: {
    ...bare.left,
    upperLid: mm([
      [16, 0],
      [30, 5],
      [44, 0],
    ]),
  },
};

const LID = { detail: { field: "space over the left lid" } };

describe("a plan that would run over the eye", () => {
  it("is refused between the points of a lid, too", () => {
    // The lid passes x = 27 at 5 · 11/14 = 3.93.
    const pinned = (y: number) =>
      planDots(withLids, { pins: [{ side: "left", dot: "lowerBody", at: mm([27, y]) }] });
    const refused = refusal(() => pinned(3.9));
    expect(refused).toMatchObject({ code: "contradicting-pins", ...LID });
    expect(refused.detail.value).toBeCloseTo(3.9 - 55 / 14, 9);
    expect(pinned(7).dots.left.lowerBody).toEqual([27, 7]);
  });

  it("is refused where it starts under the lid", () => {
    const pinned = () =>
      planDots(withLids, { pins: [{ side: "left", dot: "lowerStart", at: mm([17, -3]) }] });
    expect(refusal(pinned)).toMatchObject({ code: "contradicting-pins", ...LID });
  });

  it("is refused across the line between the eye corners, where no lid is known", () => {
    const thick = { start: mm(25), body: mm(25), arch: mm(25) };
    expect(refusal(() => planDots(bare, { thickness: thick }))).toMatchObject({
      code: "no-solution",
      detail: { field: "space over the right lid" },
    });
  });
});
