import { distance } from "brow-geometry/geometry";
import { type Face, turnToFront } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { symmetricMeshes, turnedAndScaled } from "../support/symmetric-mesh.js";
import { raisedHead } from "../support/synthetic-head.js";

const heads = symmetricMeshes();

/** How much longer the left brow shows than the right one, straight on the photo. */
function falseDifference({ right, left }: Face<"mm">): number {
  const lengthOf = (upper: Face<"mm">["left"]["brow"]): number => {
    const [start, end] = [upper?.upper[0], upper?.upper.at(-1)];
    return start === undefined || end === undefined ? Number.NaN : distance(start, end);
  };
  return lengthOf(left.brow) - lengthOf(right.brow);
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Degrees by which the line from sellion to a point of the nose leans from the vertical. */
function leanOf(
  { midline: { sellion } }: Face<"mm">,
  tip: Face<"mm">["midline"]["subnasale"],
): number {
  const [dx, dy] = [(tip?.[0] ?? 0) - (sellion?.[0] ?? 0), (sellion?.[1] ?? 0) - (tip?.[1] ?? 0)];
  return (Math.atan2(dx, dy) * 180) / Math.PI;
}

describe("real heads, made symmetric and turned (vectors: Depth of the brow)", () => {
  it("are enough to say something", () => {
    expect(heads.length).toBeGreaterThanOrEqual(5);
  });

  it("show about 2.8 mm of false difference between the brows at 3° in the plane", () => {
    const shown = heads.map((head) => Math.abs(falseDifference(turnedAndScaled(head, 3))));
    expectClose(meanOf(shown), 2.8, 0.3);
  });

  it("keep none of it once they are turned to their front", () => {
    for (const head of heads) {
      const { face } = turnToFront(turnedAndScaled(head, 3));
      expect(Math.abs(falseDifference(face))).toBeLessThan(1e-6);
    }
  });

  it.each([0.8, 1.2])("keep about 30 % of it where depth is scaled by %d", (times) => {
    const left = heads.map((head) => {
      const { face, turning } = turnToFront(turnedAndScaled(head, 3, times));
      const held = raisedHead(face, turning.pitch ?? 0);
      return Math.abs(falseDifference(held) / falseDifference(turnedAndScaled(head, 3)));
    });
    expectClose(meanOf(left), 0.3, 0.02);
  });

  it("lean at subnasale by about 0.15° for each degree", () => {
    const leans = heads.map((head) => {
      const turned = turnedAndScaled(head, 3);
      return Math.abs(leanOf(turned, turned.midline.subnasale)) / 3;
    });
    expectClose(meanOf(leans), 0.15, 0.05);
  });

  it("lean at the tip of the nose as if it were bent by 2.92°, at 4.6°, once they look straight ahead", () => {
    const leans = heads.map((head) => {
      const turned = turnedAndScaled(turnToFront(head).face, 4.6);
      return leanOf(turned, turned.midline.pronasale);
    });
    // The pitch that was corrected is good to 5°, which is 0.4° here.
    expectClose(meanOf(leans), 2.92, 0.4);
  });
});
