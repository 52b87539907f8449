import { test } from "@fast-check/vitest";
import { type Face, mm, planBrows, px, requirePlannable, type Side } from "brow-geometry";
import { weighChoices } from "brow-geometry/mapping";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** A face with the borders of one brow exchanged. */
function exchanged(face: ReturnType<typeof syntheticFace>, side: Side): typeof face {
  const { upper, lower } = face[side].brow;
  return { ...face, [side]: { ...face[side], brow: { upper: lower, lower: upper } } };
}

describe("requirePlannable", () => {
  it.each(["right", "left"] as const)("names the %s brow whose borders are exchanged", (side) => {
    const face = exchanged(syntheticFace(), side);
    const photo: Face<"px"> = mapFace(face, ([x, y]) => px([500 + 10 * x, 400 - 10 * y]));
    for (const ask of [
      () => requirePlannable(face),
      () => requirePlannable(photo),
      () => planBrows(face),
      () => weighChoices(face, [{}]),
    ]) {
      const { code, detail } = refusal(ask);
      expect([code, detail.field]).toEqual(["inconsistent", `${side}.brow`]);
      expect(detail.need).toBe("an upper border above the lower one: they look exchanged");
    }
  });

  it("takes a brow without a lower border, and one whose borders are one line", () => {
    const { right, left, midline } = syntheticFace();
    const { upper } = left.brow;
    const bare = { right, left: { ...left, brow: { upper } }, midline };
    expect(requirePlannable(bare)).toBe(bare);
    const thin = { right, left: { ...left, brow: { upper, lower: upper } }, midline };
    expect(requirePlannable(thin)).toBe(thin);
  });

  test.prop([anyFace(2)])("takes any face turned in its picture", (face) => {
    for (const turn of [0.5, 1.6, 3.1]) {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      expect(() =>
        requirePlannable(mapFace(face, ([x, y]) => mm([c * x - s * y, s * x + c * y]))),
      ).not.toThrow();
    }
  });
});
