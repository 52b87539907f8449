import {
  type Choices,
  mapBrow,
  mm,
  type PlannableFace,
  planMarks,
  recordOf,
  replay,
} from "brow-geometry";
import { parseRecord } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** The synthetic face, its left brow 3 mm higher. */
function raisedLeft(): PlannableFace {
  const { right, left, midline } = syntheticFace();
  const brow = mapBrow(left.brow, ([x, y]) => mm([x, y + 3]));
  return { right, left: { ...left, brow }, midline };
}

const heldBack = (choices: Choices, face = raisedLeft()): readonly string[] =>
  planMarks(face, choices)
    .reasons.filter(({ code }) => code === "levels-held-back")
    .map(({ text }) => text);

describe("a plan whose levels are limited", () => {
  it("moves no evened dot farther than the limit, and says what is left", () => {
    const { marks } = planMarks(raisedLeft(), { levelLimit: mm(1) });
    const even = planMarks(syntheticFace()).marks;
    // Half-way is 1.5 mm from either brow: 1 mm of it is allowed, so that 1 mm is left.
    expectClose(marks.right.upperStart[1] - even.right.upperStart[1], 1, 1e-9);
    expectClose(marks.left.upperStart[1] - even.left.upperStart[1], 2, 1e-9);
    expectClose(marks.left.upperArch[1] - marks.right.upperArch[1], 1, 1e-9);
    expectClose(marks.left.lowerStart[1] - marks.right.lowerStart[1], 1, 1e-9);
    expect(heldBack({ levelLimit: mm(1) })[0]).toBe(
      "To even the heights no start dot was taken more than 1.0 mm up or down from where its own hair has it: the two stay 1.0 mm unequally high; the left one is higher.",
    );
    expect(heldBack({ levelLimit: mm(1) })).toHaveLength(3);
  });

  it("moves only the brow that follows, and that one no farther", () => {
    const choices = { lead: "left", levelLimit: mm(2) } as const;
    const free = planMarks(raisedLeft(), { lead: "left" }).marks;
    const { marks } = planMarks(raisedLeft(), choices);
    expect(marks.left).toEqual(free.left);
    expectClose(free.right.upperStart[1] - marks.right.upperStart[1], 1, 1e-9);
  });

  it("blames no pin for what the limit holds back", () => {
    const pins = [{ side: "left", dot: "lowerBody", at: mm([30, 19]) }] as const;
    const codes = planMarks(raisedLeft(), { levelLimit: mm(0.5), pins }).reasons.map(
      ({ code }) => code,
    );
    expect(codes).toContain("levels-held-back");
    expect(codes).not.toContain("pins-break-levels");
    expect(codes).not.toContain("pins-break-tail-heights");
  });

  it("changes nothing where the limit is not reached", () => {
    expectClose(
      planMarks(raisedLeft(), { levelLimit: mm(2) }).marks,
      planMarks(raisedLeft()).marks,
      1e-12,
    );
    expect(heldBack({ levelLimit: mm(2) })).toEqual([]);
    expect(heldBack({})).toEqual([]);
  });

  it("on no face leaves the two starts farther apart than they grow", () => {
    fc.assert(
      fc.property(anyFace(1), fc.double({ min: 0.1, max: 3, noNaN: true }), (face, limit) => {
        const height = ({ right, left }: { right: number; left: number }): number => left - right;
        const own = (levels: "right" | "left"): number =>
          planMarks(face, { levels }).marks.left.upperStart[1];
        const grown = height({ right: own("right"), left: own("left") });
        const { marks } = planMarks(face, { levelLimit: mm(limit) });
        const left = marks.left.upperStart[1] - marks.right.upperStart[1];
        expectClose(left, Math.sign(grown) * Math.max(0, Math.abs(grown) - 2 * limit), 1e-9);
      }),
      { numRuns: 20 },
    );
  });

  it("leaves pinned dots and those that mirror them where they are", () => {
    const pins = [{ side: "left", dot: "upperStart", at: mm([16, 25]) }] as const;
    const { marks } = planMarks(raisedLeft(), { pins, levelLimit: mm(0.5) });
    expectClose(
      [marks.left.upperStart, marks.right.upperStart],
      [
        [16, 25],
        [-16, 25],
      ],
      1e-12,
    );
    expect(heldBack({ pins, levelLimit: mm(0.5) }).join()).not.toContain("start dot");
  });

  it("is replayed from its record, limit and all", () => {
    const record = recordOf({ kind: "face", face: raisedLeft() }, { levelLimit: mm(1) });
    const read = parseRecord(JSON.parse(JSON.stringify(record)));
    expect(read.choices.levelLimit).toBe(1);
    expect(replay(read).marks).toEqual(record.plan.marks);
    expect(replay(read).reasons).toEqual(record.plan.reasons);
  });

  it.each<[string, string, Choices]>([
    ["out-of-range", "levelLimit", { levelLimit: mm(0) }],
    ["inconsistent", "levelLimit", { levelLimit: mm(1), lead: "left", carry: "measure" }],
  ])("is refused as %s", (code, field, choices) => {
    const { code: found, detail } = refusal(() => planMarks(syntheticFace(), choices));
    expect([found, detail.field]).toEqual([code, field]);
  });
});
