import { note } from "../../../src/units/internal.js";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

const SENTENCES = {
  tilt: "{side}: {angle:1}°, {angle}°",
  zeros: "{x:1} {x:0}",
  tenth: "{x:1}",
} as const;

describe("note", () => {
  it("puts its values into the sentence", () => {
    expect(note(SENTENCES, "tilt", { side: "left", angle: 3.14159 })).toEqual({
      code: "tilt",
      text: "left: 3.1°, 3.14159°",
      values: { side: "left", angle: 3.14159 },
    });
  });

  it("writes no minus before a zero", () => {
    expect(note(SENTENCES, "zeros", { x: -0.04 }).text).toBe("0.0 0");
    expect(note(SENTENCES, "tenth", { x: -0.06 }).text).toBe("-0.1");
  });

  it("refuses a place without a value", () => {
    expect(refusal(() => note(SENTENCES, "zeros", {} as { x: number })).detail.field).toBe(
      "values.x",
    );
  });
});
