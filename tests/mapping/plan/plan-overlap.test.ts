import { mm, outline, planDots, planOverlap } from "brow-geometry";
import { naturalOutline, outlineArea } from "brow-geometry/proportions";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { syntheticFace } from "../../support/synthetic-face.js";

describe("planOverlap", () => {
  it("divides the areas of the natural and of the planned brow", () => {
    const face = syntheticFace();
    const plan = planDots(face);
    const { right, left } = planOverlap(plan);
    if (left === undefined || right === undefined) expect.fail("no lower border");
    expectClose(left.shared + left.hairOutside, outlineArea(naturalOutline(face.left.brow)), 1e-9);
    expectClose(left.shared + left.skinInside, outlineArea(outline(plan.dots.left)), 1e-9);
    // The synthetic face is symmetric.
    expectClose(right, left, 1e-9);
  });

  it("takes away as much hair as a plan is thinner", () => {
    const face = syntheticFace();
    const lean = { start: mm(5), body: mm(4), arch: mm(3) };
    const [usual, thin] = [planDots(face), planDots(face, { thickness: lean })].map(planOverlap);
    expect(thin?.left?.hairOutside).toBeGreaterThan((usual?.left?.hairOutside ?? NaN) + 60);
  });

  it("knows nothing of a side without a lower border", () => {
    const face = syntheticFace();
    const bare = { ...face, left: { ...face.left, brow: { upper: face.left.brow.upper } } };
    const { right, left } = planOverlap(planDots(bare));
    expect(left).toBeUndefined();
    expect(right?.shared).toBeGreaterThan(100);
  });
});
