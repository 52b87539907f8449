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
    [{ eyeWidthShare: 3 }, "share of the eye’s width is 3, may be 0.4 to 1.4."],
    [
      { thickness: { start: mm(-1), body: mm(7), arch: mm(6) } },
      "thickness at the start cannot be -1.",
    ],
    [{ shape: { startSlope: 9 } }, "slope at the start is 9, may be 0 to 3."],
    [
      { pins: [{ side: "left", dot: "upperArch", at: mm([Number.NaN, 2]) }] },
      "pin 1 cannot be [NaN, 2].",
    ],
    [
      { pins: [{ side: "right", dot: "upperArch", at: mm([-64, 27]) }] },
      "right arch finds no place among the pins.",
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
      "Cannot be planned on this face: right pupil, left pupil are missing.",
    ]);
  });

  it("names pins as an artist does, and shows no more decimals than tell", () => {
    const text = said({ pins: [{ side: "right", dot: "upperArch", at: mm([-64, 27]) }] });
    expect(text).not.toMatch(/pins\[|upperArch|\d\.\d{5}/);
  });

  it("leaves what was given as text alone, whatever it holds", () => {
    const given = String.raw`$& pins[0].at upperArch; needs <b>`;
    const text = said({ lead: given as "left" });
    expect(text).toBe(`Cannot be planned on this face: leading brow cannot be "${given}".`);
  });

  it("tells of a brow that would run over the eye, and of a flat one without an arch", () => {
    expect(said({ thickness: { start: mm(7), body: mm(40), arch: mm(40) } })).toMatch(
      /^Cannot be planned on this face: the (?:right|left) brow runs over the eye\.$/,
    );
    const flat = syntheticFace();
    const level = mm([
      [15, 20],
      [38, 20],
      [57, 20],
    ]);
    const mirrored = mm(level.map(([x, y]) => [-x, y] as const));
    const face: PlannableFace = {
      ...flat,
      right: { ...flat.right, brow: { upper: mirrored } },
      left: { ...flat.left, brow: { upper: level } },
    };
    const [row] = weighChoices(face, [{ arch: "exocanthion-vertical" }]).rows;
    expect(row?.kind).not.toBe("no-solution");
  });

  it("gives programs the error and the path, and what is wrong as a note", () => {
    const [row] = weighChoices(syntheticFace(), [{ eyeWidthShare: 3 }]).rows;
    expect(row?.reasons[0]?.values).toMatchObject({
      error: "out-of-range",
      path: "eyeWidthShare",
      why: { code: "why-range", values: { value: 3, from: 0.4, to: 1.4 } },
    });
  });
});
