import {
  type Choices,
  mm,
  planBrows,
  planDots,
  planOverlap,
  type PlannableFace,
  say,
  workSteps,
} from "brow-geometry";
import {
  carryInto,
  compareResult,
  grantWishes,
  shapeFindings,
  weighChoices,
} from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { isHair } from "../../../src/mapping/dots/is-hair.js";
import { PICTURED_PLANS } from "../../drawing/pictured-plans.js";
import { plainFace } from "../../support/plain-face.js";
import { refusal } from "../../support/refusal.js";

const STAND_IN = { landmark: "brow", instead: "brow-template" } as const;

/** An invented face whose brows start 3.5 mm nearer to the nose than their guide, 17 mm from the midline. */
function face(standIns: PlannableFace["standIns"] = []): PlannableFace {
  const upper = [
    [13.5, 20],
    [38, 27],
    [57, 18],
  ] as const;
  const lower = [
    [13.5, 12],
    [38, 20],
    [57, 17],
  ] as const;
  return { ...plainFace(upper, lower), standIns };
}

const guessed = face([STAND_IN]);

/** Plans of what a detector found on real photos. */
const DETECTED = PICTURED_PLANS.filter(([, { face }]) => !isHair(face, "right"));

describe("a brow", () => {
  it("is hair unless something stands in for it, on both sides or on one", () => {
    expect([isHair(face(), "right"), isHair(face(), "left")]).toEqual([true, true]);
    expect([isHair(guessed, "right"), isHair(guessed, "left")]).toEqual([false, false]);
    const one = face([{ ...STAND_IN, side: "right" }]);
    expect([isHair(one, "right"), isHair(one, "left")]).toEqual([false, true]);
    expect(isHair(face([{ landmark: "alare", instead: "wing-base" }]), "right")).toBe(true);
  });
});

describe("a plan of brows that are guessed", () => {
  it("follows guides and the ruler where hair was asked for", () => {
    const choices: Choices = { start: "natural", arch: "natural", tail: "natural" };
    const { choices: settled, dots } = planDots(guessed, choices);
    const { start, arch, tail } = settled;
    expect([start, tail]).toEqual(["alare-vertical", "alare-through-exocanthion"]);
    expect(arch).not.toBe("natural");
    // On the guide, where the border has risen by 7 · 3.5/24.5.
    expect([...dots.left.upperStart]).toEqual([17, 21]);
    expect([...planDots(face(), choices).dots.left.upperStart]).toEqual([13.5, 20]);
  });

  it("says that nothing is known of hair, and asks for borders", () => {
    const plan = planBrows(guessed);
    const said = plan.reasons.filter(({ code }) => code === "hair-not-seen");
    expect(said.map((reason) => say(reason))).toEqual([
      "In place of hair, the right brow has the mesh's brow template, not the hair itself. Guides and the ruler place its dots.",
      "In place of hair, the left brow has the mesh's brow template, not the hair itself. Guides and the ruler place its dots.",
    ]);
    const caution = plan.cautions.find(({ code }) => code === "brow-not-seen");
    expect(caution && say(caution)).toBe(
      "In place of hair, this map has the mesh's brow template, not the hair itself. Draw the borders of any hair by hand or take them from the picture: until then nothing is known there of what to remove, to fill or to move.",
    );
  });

  it("places every dot, and knows no area", () => {
    const plan = planBrows(guessed);
    expect(new Set(plan.moves.map(({ kind }) => kind))).toEqual(new Set(["place"]));
    expect(planOverlap(plan)).toEqual({ right: undefined, left: undefined });
    const [row] = weighChoices(guessed, [{}]).rows;
    const codes = row?.reasons.map(({ code }) => code);
    expect(codes).not.toContain("moves");
    expect(codes).toContain("areas-unknown");
  });

  it("is thick as brows usually are, however sure its borders are said to be", () => {
    const { reasons } = planDots(guessed);
    expect(reasons.map(({ code }) => code)).toContain("thickness-usual");
    expect(planDots(face()).reasons.map(({ code }) => code)).toContain("thickness-natural");
  });

  it("closes no lid space that grows", () => {
    const low = (of: PlannableFace): PlannableFace => ({
      ...of,
      left: { ...of.left, pupil: mm([30, 0]) },
    });
    const closing = { thickness: { start: mm(13), body: mm(13), arch: mm(13) } };
    const codes = (of: PlannableFace): readonly string[] =>
      shapeFindings(planDots(low(of), closing)).map(({ code }) => code);
    expect(codes(face())).toContain("lid-space-closes");
    expect(codes(guessed)).not.toContain("lid-space-closes");
  });

  it("gives no start nearer to the nose than its guides for a wish", () => {
    const grantOf = (of: PlannableFace): number =>
      grantWishes(of, [{ wish: "closer", amount: mm(4) }], { keepHair: mm(0) }).grants[0]
        ?.granted ?? NaN;
    // From 17 mm to the guide through endocanthion at 16 mm; to the hair at 13.5 mm where it is hair.
    expect(grantOf(guessed)).toBeCloseTo(1, 6);
    expect(grantOf(face())).toBeCloseTo(3.5, 6);
  });

  it.each(DETECTED)("says nothing of what grows, for %s", (_, plan) => {
    const notes = [...plan.reasons, ...plan.cautions, ...workSteps(plan)];
    const said = notes.filter(({ code }) => code !== "brow-not-seen").map((note) => say(note));
    expect(said.filter((sentence) => /\bgrows?\b|natural|misses the hair/.test(sentence))).toEqual(
      [],
    );
  });
});

describe("what comes after", () => {
  const plan = planBrows(face());

  it("does not tell where skin went from a guess, in either capture", () => {
    for (const [from, to] of [
      [plan, guessed],
      [planBrows(guessed), face()],
    ] as const) {
      const { brows, notes } = carryInto(from, to);
      expect(brows.left.dots.upperArch.up).toEqual({ value: 0, u: Infinity });
      expect(notes.map((note) => say(note))[0]).toBe(
        "right brow: a detector's guess at it is no hair, so how far its skin has moved is not known; its dots stand where eye corners and nose put them.",
      );
    }
  });

  it("is not read on a guess", () => {
    expect(
      refusal(() => compareResult(plan, [{ name: "healed", weeks: 6, face: guessed }])),
    ).toMatchObject({ code: "missing-landmark", detail: { field: "captures[0].face.right.brow" } });
  });
});
