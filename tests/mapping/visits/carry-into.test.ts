import { type BrowPlan, type Face, mm, planBrows, type PlannableFace, say } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { carryInto } from "brow-geometry/mapping";
import { flatPoint } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { SIDES } from "../../../src/units/internal.js";
import { anyBetween, anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

/** A face whose brows alone have moved: outward, up, and up once more in proportion to the way out. */
function drawn(face: PlannableFace, outward: number, up: number, raised = 0): SyntheticFace {
  const moved = mapFace(face, ([x, y]) =>
    flatPoint(x + Math.sign(x) * outward, y + up + raised * Math.abs(x)),
  ) as PlannableFace;
  return {
    ...face,
    right: { ...face.right, brow: moved.right.brow },
    left: { ...face.left, brow: moved.left.brow },
  } as SyntheticFace;
}

/** Turned by 90°, half as large, and shifted: by hand (x, y) → (3 − y/2, −2 + x/2). */
const elsewhere = (face: Face<"mm">): SyntheticFace =>
  mapFace(face, ([x, y]) => flatPoint(3 - y / 2, -2 + x / 2)) as SyntheticFace;

function expectAt(
  plan: BrowPlan,
  { brows }: ReturnType<typeof carryInto>,
  where: (x: number, y: number, out: 1 | -1) => readonly [number, number],
): void {
  for (const side of SIDES) {
    for (const dot of DOT_NAMES) {
      const [x, y] = plan.dots[side][dot];
      const [atX, atY] = brows[side].dots[dot].at;
      expectClose([atX, atY], where(x, y, side === "left" ? 1 : -1), 1e-9);
    }
  }
}

describe("carrying a plan into another capture", () => {
  it("is the identity where it is the same capture", () => {
    fc.assert(
      fc.property(anyFace(1), (face) => {
        const plan = planBrows(face, {}, { preview: true });
        const carried = carryInto(plan, face);
        expectAt(plan, carried, (x, y) => [x, y]);
        for (const side of SIDES) {
          const values = Object.values(carried.brows[side].dots);
          expectClose(
            values.flatMap(({ up, outward }) => [up.value, outward.value]),
            values.flatMap(() => [0, 0]),
            1e-9,
          );
        }
        expect(carried.notes.map(({ code }) => code)).toEqual([
          "skin-stayed",
          "skin-stayed",
          "carried-check-upright",
        ]);
      }),
      { numRuns: 20 },
    );
  });

  it("goes where the capture lies, however large and turned it is", () => {
    const carried = carryInto(syntheticPlan, elsewhere(syntheticFace()));
    expectAt(syntheticPlan, carried, (x, y) => [3 - y / 2, -2 + x / 2]);
    expectClose(carried.brows.left.dots.upperArch.up.value, 0, 1e-9);
  });

  it("takes every dot along with the skin that a finger has drawn", () => {
    // Outward by 1.5 and down by 2, everywhere: what the hair did, every dot did.
    const carried = carryInto(syntheticPlan, drawn(syntheticFace(), 1.5, -2));
    expectAt(syntheticPlan, carried, (x, y, out) => [x + out * 1.5, y - 2]);
    const { up, outward, unmoved } = carried.brows.right.dots.tailEnd;
    expectClose([up.value, outward.value], [-2, 1.5], 1e-9);
    expectClose(unmoved, syntheticPlan.dots.right.tailEnd.slice(0, 2), 1e-9);
    const moved = "its skin has moved down 2 mm, outward 1.5 mm against eye corners and nose.";
    expect(carried.notes.slice(0, 6).map((note) => say(note))).toEqual(
      SIDES.flatMap((side) =>
        ["start", "arch", "tail end"].map((dot) => `${side} ${dot}: ${moved}`),
      ),
    );
  });

  it("raises the tail more than the start where the hair shows it", () => {
    // Straight borders, so that shares by tape are shares sideways: raised by a twentieth of the way out.
    const face = syntheticFace();
    const straight = (side: "right" | "left"): SyntheticFace["left"] => {
      const out = side === "left" ? 1 : -1;
      const upper = mm([
        [out * 14, 20],
        [out * 58, 20],
      ]);
      const lower = mm([
        [out * 14, 14],
        [out * 58, 14],
      ]);
      return { ...face[side], brow: { upper, lower } };
    };
    const flat: SyntheticFace = { ...face, right: straight("right"), left: straight("left") };
    const pins = SIDES.map((side) => {
      const at = mm([side === "left" ? 40 : -40, 20]);
      return { side, dot: "upperArch", at } as const;
    });
    const plan = planBrows(flat, { pins });
    const { brows } = carryInto(plan, drawn(flat, 0, 0, 0.05));
    expect(brows.left.dots.upperArch.up.value).toBeCloseTo(2, 6);
    expect(brows.right.dots.upperArch.up.value).toBeCloseTo(2, 6);
    expect(brows.left.dots.lowerArch.up.value).toBeCloseTo(2, 6);
  });

  it("says what it does not know where a brow is not seen", () => {
    const { brow, ...right } = syntheticFace().right;
    expect(brow.upper).toHaveLength(7);
    const { brows, notes } = carryInto(syntheticPlan, { ...drawn(syntheticFace(), 0, 3), right });
    expect(brows.right.dots.tailEnd.up).toEqual({ value: 0, u: Number.POSITIVE_INFINITY });
    expect(brows.left.dots.tailEnd.up.value).toBeCloseTo(3, 9);
    expect(notes.map(({ code }) => code)).toEqual([
      "skin-not-seen",
      "skin-moved",
      "skin-moved",
      "skin-moved",
      "carried-check-upright",
    ]);
  });

  it("says where eye corners and nose have moved against each other", () => {
    const face = syntheticFace();
    const left = { ...face.left, exocanthion: mm([49, 4]) };
    const { notes } = carryInto(syntheticPlan, { ...face, left });
    expect(notes.map(({ code }) => code)).toContain("stable-points-disagree");
  });

  it("has an uncertainty that holds both brows and how the captures lie over each other", () => {
    fc.assert(
      fc.property(anyBetween(-3, 3), (up) => {
        const { brows, registration } = carryInto(syntheticPlan, drawn(syntheticFace(), 0, up));
        const { u } = brows.left.dots.upperArch.up;
        // By hand: 0.26 mm on either capture is √2 · 0.26 = 0.37 mm for a dot alone.
        expect(u).toBeGreaterThan(Math.hypot(0.26, 0.26, registration.shiftU) - 1e-12);
        expect(u).toBeLessThan(1);
      }),
      { numRuns: 10 },
    );
  });
});
