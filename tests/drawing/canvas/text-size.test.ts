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

describe("textWidth of other scripts", () => {
  // A full-width character fills its em: Unicode Standard Annex 11, East Asian Width.
  it.each(["眉毛設計図", "まゆげ", "눈썹", "（眉）"])("is an em a character of %s", (text) => {
    expect(textWidth(text, 10) / Array.from(text).length).toBeCloseTo(10, 0);
  });

  // Advance widths of words in DejaVu Sans and Noto Kufi Arabic, the wider of both, as Chromium measures them.
  it.each([
    ["بداية", 5 * 0.43],
    ["قوس", 3 * 0.79],
    ["ذيل", 3 * 0.52],
    ["شمس", 3 * 0.92],
    ["صص", 2 * 1.04],
  ])("is no less for %s than it takes", (text, ems) => {
    expect(textWidth(text, 10)).toBeGreaterThanOrEqual(10 * ems);
  });
});

describe("wrapped", () => {
  it("breaks Chinese and Japanese between characters, not before their signs, nor in a number or its unit", () => {
    expect(wrapped("眉頭、眉山と眉尻。", 10, 41)).toEqual(["眉頭、眉", "山と眉", "尻。"]);
    expect(wrapped("面積mm²：右 33、左 28", 10, 45)).toEqual(["面積", "mm²：", "右 33、", "左 28"]);
    expect(wrapped("眉尾：12.5 mm", 10, 62)).toEqual(["眉尾：", "12.5 mm"]);
  });

  it("leaves no opening sign at the end of a line", () => {
    for (const [open, close] of ["（）", "「」", "『』", "【】", "〈〉", "《》"]) {
      expect(wrapped(`眉尾${open}右${close}`, 10, 41)).toEqual(["眉尾", `${open}右${close}`]);
    }
    expect(wrapped("眉「（右）」眉", 10, 55)).toEqual(["眉", "「（右）」", "眉"]);
    expect(wrapped("mm（右）", 10, 35)).toEqual(["mm", "（右）"]);
    expect(wrapped("眉（", 10, 41)).toEqual(["眉（"]);
  });

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
