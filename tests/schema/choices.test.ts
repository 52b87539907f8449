import { type Choices, mm, planMarks } from "brow-geometry";
import { parseChoices } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

const everything = {
  lead: "left",
  levels: "higher",
  levelLimit: 2,
  start: "alare-vertical",
  arch: "brow-length-share",
  eyeWidthShare: 0.95,
  frontShare: 0.65,
  tailHeight: "level-with-lower-start",
  thickness: { start: 7.5, body: 7, arch: 6 },
  noseBent: false,
  pins: [{ side: "right", dot: "upperArch", at: [-41, 26.5], by: "M.", reason: "a scar" }],
  declared: { upright: true, relaxed: true },
};

describe("parseChoices", () => {
  it("reads everything that an artist may choose, and nothing at all", () => {
    expect(parseChoices(JSON.parse(JSON.stringify(everything)))).toEqual(everything);
    expect(parseChoices({})).toEqual({});
  });

  it.each([
    [{ lead: "top" }, 'lead is "top"; needs one of right, left, middle'],
    [{ lead: "higher" }, 'lead is "higher"; needs one of right, left, middle'],
    [{ levels: 1 }, "levels is 1; needs one of right, left, middle, higher"],
    [{ levelLimit: 0 }, "levelLimit is 0; needs a finite number above 0"],
    [{ start: "nose" }, 'start is "nose"; needs one of alare-vertical, endocanthion-vertical'],
    [{ arch: "golden" }, 'arch is "golden"; needs one of natural, lateral-limbus-vertical'],
    [{ frontShare: 66 }, "frontShare is 66; needs a number from 0.4 to 0.9"],
    [{ eyeWidthShare: Number.NaN }, "eyeWidthShare is NaN; needs a number from 0.4 to 1.4"],
    [
      { thickness: { start: 8, body: 7, arch: 0 } },
      "thickness.arch is 0; needs a finite number above 0",
    ],
    [
      { thickness: { start: 8, body: 7 } },
      "thickness.arch is missing; needs a finite number above 0",
    ],
    [{ noseBent: "yes" }, 'noseBent is "yes"; needs true or false'],
    [{ pins: [{ side: "left", dot: "peak", at: [1, 2] }] }, 'pins[0].dot is "peak"; needs one of'],
    [
      { pins: [{ side: "left", dot: "tailEnd", at: [1, 2, 3] }] },
      "pins[0].at is [1, 2, 3]; needs two finite numbers",
    ],
    [{ pins: Array.from({ length: 15 }, () => 0) }, "; needs a list of at most 14 items"],
    [{ declared: { upright: true, lying: false } }, "declared.lying is false; needs another name"],
    [
      { color: "brown" },
      'color is "brown"; needs another name: one of lead, carry, levels, levelLimit',
    ],
    [undefined, "choices is missing; needs an object with lead, carry, levels, levelLimit"],
  ])("refuses %j", (json, message) => {
    const { code, message: said } = refusal(() => parseChoices(json));
    expect(code).toBe("not-parsed");
    expect(said).toContain(message);
    expect(said).toMatch(/^parseChoices: [^.]*(\.[^ ][^.]*)*$/);
  });
});

describe("ranges of choices", () => {
  const face = syntheticFace();

  function codeOf(work: () => unknown): string | undefined {
    try {
      work();
      return undefined;
    } catch (error) {
      return (error as { readonly code?: string }).code;
    }
  }

  it("are the same at the door and in the plan", () => {
    const share = fc.oneof(fc.double({ min: 0.3, max: 1.6 }), fc.constantFrom(0.4, 0.9, 1.4, -1));
    const choices: fc.Arbitrary<Choices> = fc.oneof(
      share.map((frontShare) => ({ frontShare })),
      share.map((eyeWidthShare) => ({ eyeWidthShare })),
      fc
        .constantFrom(-1, 0, 1e-3, 7)
        .map((body) => ({ thickness: { start: mm(8), body: mm(body), arch: mm(6) } })),
    );
    fc.assert(
      fc.property(choices, (one) => {
        const atTheDoor = codeOf(() => parseChoices(one)) === "not-parsed";
        const code = codeOf(() => planMarks(face, one));
        expect(code === "out-of-range" || code === "not-finite").toBe(atTheDoor);
      }),
    );
  });
});
