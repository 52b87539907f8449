import { eachSide, mm } from "brow-geometry";
import { drawCarried } from "brow-geometry/drawing";
import { mapFace } from "brow-geometry/landmarks";
import { carryInto } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { pictureOf, withClass } from "../picture.js";

/** The synthetic face with its brows up by so much. */
function raised(up: number): SyntheticFace {
  const face = syntheticFace();
  const lifted = mapFace(face, ([x, y]) => mm([x, y + up])) as SyntheticFace;
  return { ...face, ...eachSide((side) => ({ ...face[side], brow: lifted[side].brow })) };
}

describe("drawCarried", () => {
  const lying = raised(2.5);
  const picture = pictureOf(drawCarried(carryInto(syntheticPlan, lying), lying));
  const written = picture.texts.map(({ text }) => text);

  it("stays inside its view box, texts apart", () => {
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it("shows where the dots have gone, and says by how much", () => {
    expect(withClass(picture, "capture")).toHaveLength(2);
    expect(withClass(picture, "natural")).toHaveLength(2);
    expect(withClass(picture, "moved")).toHaveLength(2);
    expect(written.filter((text) => text.startsWith("+2.5 ± 0."))).toHaveLength(6);
    expect(written.join(" ")).toContain("Check every distance again upright");
  });

  it("draws no way where nothing has moved, and no brow that is not seen", () => {
    const { brow, ...right } = syntheticFace().right;
    expect(brow.upper).toHaveLength(7);
    const bare = { ...syntheticFace(), right };
    const drawn = pictureOf(drawCarried(carryInto(syntheticPlan, bare), bare));
    expectInside(drawn);
    expectNoCollisions(drawn);
    expect(withClass(drawn, "natural")).toHaveLength(1);
    expect(withClass(drawn, "moved")).toHaveLength(0);
    const texts = drawn.texts.map(({ text }) => text);
    expect(texts.filter((text) => text === "0.0 ± ?")).toHaveLength(3);
    expect(texts.join(" ")).toContain("it is not seen in this capture");
  });
});
