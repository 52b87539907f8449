import { eachSide, mm, outline } from "brow-geometry";
import { drawResult } from "brow-geometry/drawing";
import type { Brow, FaceWith } from "brow-geometry/landmarks";
import { outlineBorders } from "brow-geometry/proportions";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { mapBrow } from "../../../src/landmarks/internal.js";
import { refusal } from "../../support/refusal.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { pictureOf, withClass } from "../picture.js";

/** The brows of the plan as drawn, up by so much. */
function found(up: number): FaceWith<"mm", "brow"> {
  const { face, dots, choices } = syntheticPlan;
  const moved = (brow: Brow<"mm">): Brow<"mm"> =>
    mapBrow(brow, ([x, y]) => flatPoint<"mm">(x, y + up));
  const sides = eachSide((side) => ({
    ...face[side],
    brow: moved(outlineBorders(outline(dots[side], choices.shape), mm(0.01))),
  }));
  return { ...face, ...sides };
}

const captures = [
  { name: "fresh", weeks: 0, face: found(0) },
  { name: "healed", weeks: 6, face: found(-2) },
];

describe("drawResult", () => {
  const picture = pictureOf(drawResult(syntheticPlan, captures));
  const written = picture.texts.map(({ text }) => text);

  it("stays inside its view box, texts apart", () => {
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it("draws every capture over the plan, in one frame and at one scale", () => {
    expect(written).toContain("fresh, week 0");
    expect(written).toContain("healed, week 6");
    expect(withClass(picture, "planned")).toHaveLength(4);
    expect(withClass(picture, "natural")).toHaveLength(4);
  });

  it("says what is covered, lost and spread, and how far the ends went", () => {
    expect(written.filter((text) => text === "100 % of the plan covered")).toHaveLength(2);
    expect(
      written.filter((text) => /^tail end: out 0\.0 ± 0\.\d, up −2\.0 ± 0\.\d mm$/.test(text)),
    ).toHaveLength(2);
    expect(written.join(" ")).toContain("healed: right, from");
    expect(written.join(" ")).toContain("licensed practice");
  });

  it("is drawn without a lower border, too", () => {
    const face = found(0);
    const bare = { ...face, left: { ...face.left, brow: { upper: face.left.brow.upper } } };
    const drawn = pictureOf(drawResult(syntheticPlan, [{ name: "1", weeks: 6, face: bare }]));
    expectInside(drawn);
    expectNoCollisions(drawn);
  });

  it("refuses an unknown theme", () => {
    const theme = "sepia" as "light";
    expect(refusal(() => drawResult(syntheticPlan, captures, { theme })).message).toContain(
      "drawResult: theme",
    );
  });
});
