import { describe, expect, it } from "vitest";
import { reasonText } from "../../../src/drawing/sheet/reason-text.js";

const said = (why: string): string =>
  reasonText({ code: "no-solution", text: `Cannot be planned: ${why}.`, values: { why } });

describe("reasonText", () => {
  it.each([
    [
      "planBrows: eyeWidthShare is 3; needs a number from 0.4 to 1.4",
      "eye width share is 3, needs a number from 0.4 to 1.4",
    ],
    [
      "planBrows: thickness.start is -1; needs more than 0",
      "thickness start is -1, needs more than 0",
    ],
    ["planBrows: pins[0].at is [NaN, 2]; needs two", "pin 1 is [NaN, 2], needs two"],
    [
      "planDots: right upperArch is [-64, 27]; needs a place nearer than tailEnd [-57.094854279135745, 17]",
      "right upper arch is [-64, 27], needs a place nearer than tail end [-57.0949, 17]",
    ],
  ])("says %s in words", (why, words) => {
    expect(said(why)).toBe(`Cannot be planned: ${words}.`);
  });

  it("leaves what was given as text alone, whatever it holds", () => {
    const given = String.raw`"$& pins[0].at \"upperArch; needs <b>"`;
    expect(said(`planBrows: lead is ${given}; needs one`)).toBe(
      `Cannot be planned: lead is ${given}, needs one.`,
    );
  });

  it("leaves other reasons as they are", () => {
    const text = "planBrows: upperArch; needs";
    expect(reasonText({ code: "moves", text, values: {} })).toBe(text);
  });
});
