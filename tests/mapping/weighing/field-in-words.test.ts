import { type Choices, mm, type PlannableFace, say } from "brow-geometry";
import { weighChoices } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { syntheticFace } from "../../support/synthetic-face.js";

const said = (choices: Choices): string =>
  weighChoices(syntheticFace(), [choices])
    .rows[0]?.reasons.slice(0, 1)
    .map((reason) => say(reason))
    .join() ?? "";

describe("why a choice cannot be planned", () => {
  it.each<[Choices, string]>([
    [{ eyeWidthShare: 3 }, "share of the eye’s width is 3, needs a number from 0.4 to 1.4."],
    [
      { thickness: { start: mm(-1), body: mm(7), arch: mm(6) } },
      "thickness at the start is -1, needs more than 0.",
    ],
    [{ shape: { startSlope: 9 } }, "slope at the start is 9, needs a number from 0 to 3."],
    [
      { pins: [{ side: "left", dot: "upperArch", at: mm([Number.NaN, 2]) }] },
      "pin 1 is [NaN, 2], needs",
    ],
    [
      { pins: [{ side: "right", dot: "upperArch", at: mm([-64, 27]) }] },
      "right arch is [-64, 27], needs a place nearer the midline than the tail end at [-",
    ],
  ])("says %j in words", (choices, words) => {
    expect(said(choices)).toContain(`Cannot be planned on this face: ${words}`);
  });

  it("names landmarks that are missing, and no rule by its code", () => {
    const { right, left, ...face } = syntheticFace();
    const without = { ...face, right: { ...right }, left: { ...left } } as PlannableFace;
    for (const side of ["right", "left"] as const) {
      delete (without[side] as { pupil?: unknown }).pupil;
    }
    const [row] = weighChoices(without, [{ arch: "alare-through-pupil" }]).rows;
    expect(row?.reasons.map((reason) => say(reason))).toEqual([
      "Cannot be planned on this face: right pupil, left pupil is missing, needs to be placed.",
    ]);
  });

  it("names pins as an artist does, and shows no more decimals than tell", () => {
    const text = said({ pins: [{ side: "right", dot: "upperArch", at: mm([-64, 27]) }] });
    expect(text).toMatch(/; pinned: right arch\.$/);
    expect(text).not.toMatch(/\d\.\d{5}/);
  });

  it("leaves what was given as text alone, whatever it holds", () => {
    const given = String.raw`$& pins[0].at upperArch; needs <b>`;
    const text = said({ lead: given as "left" });
    expect(text).toBe(
      `Cannot be planned on this face: leading brow is "${given}", needs one of right, left, middle.`,
    );
  });

  it("gives programs the error, the path, the value and the need", () => {
    const [row] = weighChoices(syntheticFace(), [{ eyeWidthShare: 3 }]).rows;
    expect(row?.reasons[0]?.values).toMatchObject({
      error: "out-of-range",
      path: "eyeWidthShare",
      value: "3",
      need: "a number from 0.4 to 1.4",
    });
  });
});
