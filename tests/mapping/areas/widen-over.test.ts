import { mm, planDots, say } from "brow-geometry";
import { type SkinArea, widenOver } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import {
  LEVEL_CHOICES as choices,
  levelFace as face,
  rectangle,
} from "../../support/plain-face.js";
import { refusal } from "../../support/refusal.js";

/** Old pigment that reaches 1.5 mm below the left brow, 10 mm wide. */
const below: SkinArea = { name: "pigment", aim: "cover", edge: rectangle(20, 30, 10.5, 18) };

describe("widenOver", () => {
  it("makes both brows wider by as much as covers the area", () => {
    const { grants, checks, choices: wider } = widenOver(face, [below], choices, { most: mm(2) });
    expect(grants.map(({ wish, granted }) => [wish.wish, granted])).toEqual([["fuller", 1.5]]);
    expect(checks.map(({ note }) => note.code)).toEqual(["area-covered"]);
    const { dots } = planDots(face, wider);
    expectClose([dots.left.lowerStart[1], dots.right.lowerStart[1]], [10.5, 10.5], 1e-9);
  });

  it("makes them no wider than the artist allows, and says what still sticks out", () => {
    const { grants, checks } = widenOver(face, [below], choices, { most: mm(1) });
    expect(grants.map(({ granted }) => granted)).toEqual([1]);
    // 10 mm by what is left, 0.5 mm.
    expectClose([checks[0]?.beyond, checks[0]?.distance], [5, 0.5], 0.02);
  });

  it("changes nothing where nothing is allowed or needed", () => {
    expect(widenOver(face, [below], choices, { most: mm(0) }).choices).toEqual(choices);
    const inside = { ...below, edge: rectangle(20, 30, 14, 18) };
    const { choices: same, grants } = widenOver(face, [inside], choices, { most: mm(3) });
    expect(same).toEqual(choices);
    expect(grants).toEqual([]);
  });

  it("lifts where the area reaches above, and keeps the lower border", () => {
    const above = { ...below, edge: rectangle(20, 30, 14, 21) };
    const { choices: wider, checks } = widenOver(face, [above], choices, { most: mm(2) });
    const { dots } = planDots(face, wider);
    expectClose([dots.left.upperStart[1], dots.left.lowerStart[1]], [21, 12], 0.11);
    expect(checks.map(({ note }) => note.code)).toEqual(["area-covered"]);
  });

  it("takes a margin with it", () => {
    const { grants } = widenOver(face, [{ ...below, margin: mm(0.5) }], choices, { most: mm(3) });
    expect(grants.map(({ granted }) => granted)).toEqual([2]);
  });

  it("stays off what is to be stayed off, on either side", () => {
    const scar: SkinArea = { name: "scar", aim: "stay-off", edge: rectangle(-30, -20, 9, 11.8) };
    const { grants, checks, heldBy } = widenOver(face, [below, scar], choices, { most: mm(2) });
    expect(grants[0]?.granted).toBeLessThan(0.21);
    expect(heldBy.map((note) => say(note))).toEqual(["scar: keeps the brows from becoming wider."]);
    // One that lies clear of what is widened holds nothing back.
    const clear = { ...scar, name: "mole", edge: rectangle(-30, -20, 4, 6) };
    expect(widenOver(face, [below, clear], choices, { most: mm(2) }).heldBy).toEqual([]);
    const both = widenOver(face, [below, clear, scar], choices, { most: mm(2) });
    expect(both.heldBy.map(({ values }) => values.name)).toEqual(["scar"]);
    expect(checks.map(({ note }) => note.code)).toEqual(["area-sticks-out", "area-clear"]);
  });

  it("keeps whose allowance it was", () => {
    const { choices: wider } = widenOver(face, [below], choices, { most: mm(2), by: "Ada" });
    expect(new Set(wider.pins?.map(({ by }) => by))).toEqual(new Set(["Ada"]));
  });

  it("refuses a limit that is none", () => {
    const error = refusal(() => widenOver(face, [below], choices, { most: mm(11) }));
    expect(error.detail).toMatchObject({ where: "widenOver", field: "options.most" });
  });
});
