import { type Choices, mm, planBrows, planDots } from "brow-geometry";
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
    [
      { arch: "golden" },
      'arch is "golden"; needs one of natural, brow-length-share, lateral-limbus-vertical',
    ],
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
      { pins: [{ side: "left", dot: "tailEnd", at: [1, 2, 3, 4] }] },
      "pins[0].at is [1, 2, 3, 4]; needs two or three finite numbers",
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

/** Choices that no plan can keep, as programs without types may make them, and the field to blame. */
const BAD_CHOICES: readonly (readonly [choices: object, field: string])[] = [
  [{ lead: "top" }, "lead"],
  [{ lead: "left", carry: "copy" }, "carry"],
  [{ levels: "lower" }, "levels"],
  [{ levelLimit: -1 }, "levelLimit"],
  [{ start: "nose" }, "start"],
  [{ arch: "peak" }, "arch"],
  [{ tailHeight: "low" }, "tailHeight"],
  [{ rule: "kind" }, "rule"],
  [{ frontShare: 0.39 }, "frontShare"],
  [{ frontShare: 0.91 }, "frontShare"],
  [{ eyeWidthShare: 1.41 }, "eyeWidthShare"],
  [{ thickness: { start: -8, body: 7, arch: 6 } }, "thickness.start"],
  [{ thickness: { start: 8, body: 0, arch: 6 } }, "thickness.body"],
  [{ thickness: { start: 8, body: 7 } }, "thickness.arch"],
  [{ shape: { angularity: 1.1 } }, "shape.angularity"],
  [{ shape: { startSlope: 3.1 } }, "shape.startSlope"],
  [{ shape: { tailSlope: -0.1 } }, "shape.tailSlope"],
  [{ shape: { frontRoundness: 2 } }, "shape.frontRoundness"],
  [{ pins: [{ side: "top", dot: "tailEnd", at: [1, 2] }] }, "pins[0].side"],
  [{ pins: [{ side: "left", dot: "peak", at: [1, 2] }] }, "pins[0].dot"],
  [{ pins: [{ side: "left", dot: "tailEnd", at: [1, null] }] }, "pins[0].at"],
];

describe.each(BAD_CHOICES)("%j", (choices, field) => {
  it("is refused by name, by the schema and by the plan", () => {
    const face = syntheticFace();
    // Points are named as a whole by the plan, to the number by the schema.
    const { field: atTheDoor } = refusal(() => parseChoices(choices)).detail;
    expect(atTheDoor.startsWith(field)).toBe(true);
    expect(refusal(() => planDots(face, choices)).detail.field).toBe(field);
    expect(refusal(() => planBrows(face, choices)).detail.field).toBe(field);
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
      share.map((angularity) => ({ shape: { angularity } })),
      share.map((times) => ({ shape: { startSlope: 2.2 * times } })),
      fc
        .constantFrom(-1, 0, 1e-3, 7)
        .map((body) => ({ thickness: { start: mm(8), body: mm(body), arch: mm(6) } })),
    );
    fc.assert(
      fc.property(choices, (one) => {
        const atTheDoor = codeOf(() => parseChoices(one)) === "not-parsed";
        const code = codeOf(() => planDots(face, one));
        expect(code === "out-of-range" || code === "not-finite").toBe(atTheDoor);
      }),
    );
  });
});
