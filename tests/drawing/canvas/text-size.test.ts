import { test } from "@fast-check/vitest";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { textWidth, wrapped } from "../../../src/drawing/canvas/text-size.js";

describe("textWidth", () => {
  // Advance widths of DejaVu Sans, a wide face, in units of 1/2048 of the type size (from memory).
  it.each([
    ["0123456789", 13030],
    ["mm", 3990],
    ["arch", 1255 + 842 + 1126 + 1298],
    ["WWW", 6075],
    ["±", 1716],
    ["−", 1716],
  ])("is no less for %s than in a wide face", (text, units) => {
    expect(textWidth(text, 2048)).toBeGreaterThanOrEqual(units);
    expect(textWidth(text, 2048)).toBeLessThan(1.35 * units);
  });

  it("gives bold letters and unknown scripts more room", () => {
    expect(textWidth("arch", 10, "bold")).toBeGreaterThan(1.1 * textWidth("arch", 10));
    expect(textWidth("眉", 10)).toBeGreaterThan(10);
  });
});

describe("wrapped", () => {
  it("breaks at spaces, and inside a word that is too wide alone", () => {
    expect(wrapped("up  1.5 mm,\noutward 1 mm", 10, 60)).toEqual([
      "up",
      "1.5 mm,",
      "outward",
      "1 mm",
    ]);
    expect(wrapped("mmmmmmmm", 10, 45)).toEqual(["mmmm", "mmmm"]);
    expect(wrapped("left\u00A0+1 mm, right\u00A0+2 mm", 10, 100)).toEqual([
      "left\u00A0+1 mm,",
      "right\u00A0+2 mm",
    ]);
    expect(wrapped("  ", 10, 45)).toEqual([]);
  });

  test.prop([fc.string(), fc.integer({ min: 12, max: 200 })])(
    "loses no letter and no line is too wide",
    (text, width) => {
      const lines = wrapped(text, 10, width);
      expect(lines.join("").replace(/\s/g, "")).toBe(text.replace(/\s/g, ""));
      for (const line of lines) expect(textWidth(line, 10)).toBeLessThanOrEqual(width);
    },
  );
});
