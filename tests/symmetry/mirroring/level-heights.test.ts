import { fc, test } from "@fast-check/vitest";
import {
  type CompleteDots,
  FACE_MIDLINE,
  type LevelDot,
  levelHeights,
  type LevelRule,
  mirror,
  mm,
  type Sides,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { anyMarks, syntheticMarks } from "../../support/synthetic-dots.js";

const DOTS: readonly LevelDot[] = ["upperStart", "upperArch", "tailEnd"];

const anyBoth: fc.Arbitrary<Sides<CompleteDots<"mm">>> = fc.record({
  right: anyMarks("right"),
  left: anyMarks("left"),
});

const anyRule = fc.constantFrom<LevelRule>("right", "left", "higher", "middle");

describe("levelHeights", () => {
  test.prop([anyBoth, anyRule])("leaves nothing uneven where there is no limit", (dots, follow) => {
    const levelled = levelHeights(dots, { follow });
    for (const dot of DOTS) {
      const [right, left] = [dots.right[dot][1], dots.left[dot][1]];
      const aim = { right, left, higher: Math.max(right, left), middle: (right + left) / 2 }[
        follow
      ];
      expectClose(levelled.dots.right[dot], [dots.right[dot][0], aim], 1e-12);
      expectClose(levelled.dots.left[dot], [dots.left[dot][0], aim], 1e-12);
      expectClose(levelled.uneven[dot], 0, 1e-12);
      expectClose(levelled.moved.right[dot], aim - right, 1e-12);
    }
    expect(levelled.heldBack).toEqual({ right: [], left: [] });
  });

  test.prop([anyBoth, anyRule, fc.double({ min: 0.1, max: 3, noNaN: true })])(
    "never leaves the hair by more than the limit, and says what remains",
    (dots, follow, limit) => {
      const levelled = levelHeights(dots, { follow, limit: mm(limit) });
      for (const dot of DOTS) {
        const heights = levelled.dots;
        expect(Math.abs(levelled.moved.right[dot])).toBeLessThanOrEqual(limit + 1e-12);
        expect(Math.abs(levelled.moved.left[dot])).toBeLessThanOrEqual(limit + 1e-12);
        expectClose(levelled.uneven[dot], heights.left[dot][1] - heights.right[dot][1], 1e-12);
        const held = levelled.heldBack.right.includes(dot) || levelled.heldBack.left.includes(dot);
        // Held back by a rounding alone, it is uneven by no more than that.
        if (!held) expectClose(levelled.uneven[dot], 0, 1e-12);
        if (Math.abs(levelled.uneven[dot]) > 1e-9) expect(held).toBe(true);
      }
    },
  );

  test.prop([anyBoth, fc.constantFrom<LevelRule>("higher", "middle")])(
    "of exchanged sides gives the exchanged answer",
    ({ right, left }, follow) => {
      const straight = levelHeights({ right, left }, { follow });
      const exchanged = levelHeights(
        { right: mirror(left, FACE_MIDLINE), left: mirror(right, FACE_MIDLINE) },
        { follow },
      );
      expectClose(mirror(exchanged.dots.left, FACE_MIDLINE), straight.dots.right, 1e-12);
      expectClose(exchanged.moved.left, straight.moved.right, 1e-12);
    },
  );

  test.prop([anyBoth, anyRule])("levels once and for all", (dots, follow) => {
    const once = levelHeights(dots, { follow }).dots;
    expectClose(levelHeights(once, { follow }).dots, once, 1e-12);
  });

  test.prop([anyBoth, anyRule])(
    "keeps thickness where both borders are dotted at one distance",
    (dots, follow) => {
      const upright = {
        right: { ...dots.right, lowerArch: mm([dots.right.upperArch[0], 19]) },
        left: { ...dots.left, lowerArch: mm([dots.left.upperArch[0], 20]) },
      };
      const levelled = levelHeights(upright, { follow }).dots;
      for (const side of ["right", "left"] as const) {
        const before = upright[side].upperArch[1] - upright[side].lowerArch[1];
        expectClose(levelled[side].upperArch[1] - levelled[side].lowerArch[1], before, 1e-9);
      }
    },
  );

  it("measures the limit from the natural hair, where that is given", () => {
    const dots = { right: syntheticMarks("right"), left: syntheticMarks("left") };
    const natural = {
      right: { upperArch: mm([-39, 23]) },
      left: {},
    };
    const levelled = levelHeights(dots, { limit: mm(2), natural });
    expectClose(levelled.dots.right.upperArch[1], 25, 1e-12);
    expect(levelled.heldBack).toEqual({ right: ["upperArch"], left: [] });
    expectClose(levelled.uneven.upperArch, 1, 1e-12);
  });

  it("takes whole borders along", () => {
    const face = syntheticFace();
    const higher = { upper: face.left.brow.upper.map(([x, y]) => mm([x, y + 2])) };
    const dots = {
      right: syntheticMarks("right"),
      left: {
        ...syntheticMarks("left"),
        upperStart: mm([15, 22]),
        upperArch: mm([39, 28]),
        tailEnd: mm([57, 19.5]),
      },
    };
    const { brows } = levelHeights(dots, {
      follow: "right",
      brows: { right: face.right.brow, left: higher },
    });
    expectClose(brows?.left.upper, face.left.brow.upper, 1e-9);
    expectClose(brows?.right, face.right.brow, 1e-12);
  });

  it.each([0, -1])("refuses a limit of %s", (limit) => {
    const dots = { right: syntheticMarks("right"), left: syntheticMarks("left") };
    expect(refusal(() => levelHeights(dots, { limit: mm(limit) })).code).toBe("out-of-range");
  });
});
