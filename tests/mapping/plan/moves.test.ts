import { test } from "@fast-check/vitest";
import {
  DOTS,
  faceFrame,
  FACE_MIDLINE,
  mirror,
  mm,
  otherSide,
  planBrows,
  type PlannableFace,
  requirePlannable,
  say,
  type Scale,
  shapeFindings,
  toFace,
} from "brow-geometry";
import type { Move } from "brow-geometry/mapping";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { londonFaces } from "../../support/london-faces.js";
import { plainFace } from "../../support/plain-face.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** A face with two straight borders a side, the left brow 3 mm higher. */
function steppedFace(): PlannableFace {
  const side = (sign: 1 | -1, up: number): PlannableFace["left"] => ({
    endocanthion: mm([sign * 17, 0]),
    exocanthion: mm([sign * 44, 0]),
    alare: mm([sign * 21, -38]),
    brow: {
      upper: mm([
        [sign * 15, 20 + up],
        [sign * 38, 27 + up],
        [sign * 57, 18 + up],
      ]),
    },
  });
  return { right: side(-1, 0), left: side(1, 3), midline: {} };
}

function moveOf(moves: readonly Move[], side: Move["side"], dot: Move["dot"]): Move {
  const move = moves.find((one) => one.side === side && one.dot === dot);
  return move ?? expect.fail(`${side} ${dot}`);
}

/**
 * Even brows that start on the guide above the nose wing and end on the line from there through the outer
 * eye corner, arched by so many times as much, so thick at the start.
 */
function evenFace(arched: number, thick: number): PlannableFace {
  const face = syntheticFace();
  const wing = 14.5;
  // The line from the nose wing, 38 mm below, through the corner at 43.9: its height at 57.4.
  const end = ((57.4 - 43.9) * 38) / (43.9 - wing);
  const rises = [0, 3.2, 5.8, 7.4, 7.3, 4.6, 0];
  const side = (sign: 1 | -1): PlannableFace["left"] => {
    const at = [wing, 22, 30, 38, 44, 51, 57.4].map((x, index) => {
      const share = (x - wing) / (57.4 - wing);
      const chord = 20 + share * (end - 20) + arched * (rises[index] ?? 0);
      return { x: sign * x, y: chord, thickness: thick * (1 - share) };
    });
    return {
      ...(sign === 1 ? face.left : face.right),
      alare: mm([sign * wing, -38]),
      brow: {
        upper: mm(at.map(({ x, y }) => [x, y] as const)),
        lower: mm(at.map(({ x, y, thickness }) => [x, y - thickness] as const)),
      },
    };
  };
  return { ...face, right: side(-1), left: side(1) };
}

describe("moves", () => {
  it("compare borders in the same place: the planned one less the hair's there", () => {
    const { moves } = planBrows(steppedFace(), { lead: "left", keepHair: mm(0) });
    // The start slides 2 mm along a border that climbs by 7/23: that raises no border.
    const start = moveOf(moves, "left", "upperStart");
    expect(start.kind === "place" || [start.up.value, start.outward?.value]).toEqual([0, 2]);
    expect(say(start)).toBe("left start: outward 2 mm");
    // The right brow, 3 mm lower, mirrors the left one.
    const follower = moveOf(moves, "right", "upperStart");
    if (follower.kind === "place") return expect.fail();
    expectClose([follower.up.value, follower.outward?.value], [3, 2], 1e-9);
    expect(say(follower)).toBe("right start: up 3 mm, outward 2 mm");
  });

  it("carry how sure they are", () => {
    const { moves } = planBrows(steppedFace(), { lead: "left", keepHair: mm(0) });
    const start = moveOf(moves, "right", "upperStart");
    if (start.kind === "place") return expect.fail();
    // Two borders 2 mm along a leg of 23 that climbs by 7, each point by hand to 0.26 mm.
    const onLeg = Math.hypot(21 / 23, 2 / 23) * Math.hypot(1, 7 / 23);
    expectClose(start.up.u, Math.SQRT2 * 0.26 * onLeg, 1e-3);
    // What follows its own hair is as certain as can be: zero.
    const own = moveOf(moves, "left", "upperStart");
    expectClose(own.kind === "place" || own.up.u, 0, 1e-9);
  });

  it("are not spoken under twice their uncertainty, nor under half a millimetre", () => {
    const moved = (by: number): Move => {
      const face = syntheticFace();
      const raise = ([x, y]: readonly [number, number, ...number[]]) => mm([x, y + by]);
      const { upper, lower } = face.left.brow;
      const brow = { upper: upper.map(raise), lower: lower.map(raise) };
      const plan = planBrows({ ...face, left: { ...face.left, brow } }, { lead: "left" });
      return moveOf(plan.moves, "right", "lowerBody");
    };
    // Two borders by hand: 0.5 mm is under twice √2 · 0.26 mm on corners, 2 mm is not.
    expect([moved(0.5).kind, say(moved(0.5))]).toEqual(["stay", "right lower body: stays"]);
    expect([moved(2).kind, say(moved(2))]).toEqual(["move", "right lower body: up 2 mm"]);
    const certain: Move = {
      kind: "stay",
      side: "left",
      dot: "upperArch",
      up: { value: mm(0.4), u: mm(0) },
    };
    expect(say(certain)).toBe("left arch: stays");
    // A preview knows nothing of how sure it is, and speaks by size.
    const preview: Move = { ...certain, kind: "move", up: { value: mm(-0.6), u: mm(Infinity) } };
    expect(say(preview)).toBe("left arch: down 0.5 mm");
  });

  it("of a tail end are told from the middle of the hair", () => {
    const plan = planBrows(syntheticFace());
    const move = moveOf(plan.moves, "left", "tailEnd");
    if (move.kind === "place") return expect.fail();
    const { brow } = syntheticFace().left;
    const [x, y] = plan.dots.left.tailEnd;
    const over = ([from, to]: typeof brow.upper): number => {
      const [a, b] = [from ?? [0, 0], to ?? [0, 0]];
      return a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
    };
    const middle = (over(brow.upper.slice(-2)) + over(brow.lower.slice(-2))) / 2;
    expect(move.up.value).toBeCloseTo(y - middle, 9);
    expect(move.outward?.value).toBeCloseTo(x - 58, 9);
  });

  test.prop([
    fc.double({ min: 0.7, max: 1.2, noNaN: true }),
    fc.double({ min: 6, max: 9, noNaN: true }),
  ])("are none, nor findings, on identical even brows", (arched, thick) => {
    const plan = planBrows(evenFace(arched, thick));
    expect(plan.moves.filter(({ kind }) => kind !== "stay").map((move) => say(move))).toEqual([]);
    expect(shapeFindings(plan)).toEqual([]);
  });

  it("are none at the end of hair that ends bluntly, with its tail", () => {
    const blunt = plainFace(
      [
        [17, 20],
        [38, 27],
        [57, 18],
      ],
      [
        [17, 13],
        [38, 20],
        [57, 12],
      ],
    );
    const plan = planBrows(blunt, { tail: "natural" });
    // Half-way between its borders.
    expectClose(plan.dots.left.tailEnd, [57, 15], 1e-9);
    expect(moveOf(plan.moves, "left", "tailEnd").kind).toBe("stay");
  });

  it("are none along the upper border where both sides are one real brow, as it grows", () => {
    for (const { hand, millimetres: factor } of londonFaces()) {
      const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
      const face = toFace(hand, faceFrame(hand, scale));
      const { right } = mirror(face, FACE_MIDLINE);
      const even = requirePlannable({ right, left: face.left, midline: {} });
      const { moves } = planBrows(even, { start: "natural", tail: "natural" }, { preview: true });
      const upper = moves.filter(({ dot }) => DOTS[dot].border === "upper" && dot !== "tailEnd");
      expect(upper).toHaveLength(4);
      for (const move of upper) {
        if (move.kind === "place") return expect.fail();
        expectClose([move.up.value, move.outward?.value ?? 0], [0, 0], 1e-9);
      }
    }
  });

  test.prop([anyFace(2)], { numRuns: 20 })("of a mirrored face are mirrored", (face) => {
    const { moves } = planBrows(face);
    const mirrored = planBrows(requirePlannable(mirror(face, FACE_MIDLINE))).moves;
    for (const move of moves) {
      const other = moveOf(mirrored, otherSide(move.side), move.dot);
      expectClose({ ...other, side: move.side }, move, 1e-6);
    }
  });
});
