import { fc, test } from "@fast-check/vitest";
import { GeometryError, parseLength } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

describe("parseLength", () => {
  it.each([
    ["0.75 cm", 7.5],
    ["7.5 mm", 7.5],
    ["7.5mm", 7.5],
    ["32,5 mm", 32.5],
    ["  32.50  MM ", 32.5],
    ["1 3/16 in", 30.1625],
    ["7/8 in", 22.225],
    ['7/8"', 22.225],
    ["1″", 25.4],
    ["1.25 in", 31.75],
    ["0 mm", 0],
    ["0,1234 cm", 1.234],
  ])("reads %j", (text, expected) => {
    expectClose(parseLength(text), expected, 1e-12);
  });

  it.each([
    "32.5",
    "mm",
    "",
    "-3 mm",
    "1,250 mm",
    "1.250,5 mm",
    "1 000 mm",
    "8 m",
    "8 px",
    "8 mm 5",
    "1/0 in",
    "1 1/2/3 in",
    "0x10 mm",
    "1e3 mm",
    "Infinity mm",
    ".5 mm",
    "5. mm",
    "٣ mm",
    "8\u0000mm",
  ])("refuses %j", (text) => {
    expect(refusal(() => parseLength(text))).toMatchObject({
      code: "not-parsed",
      detail: { value: text },
    });
  });

  test.prop([fc.string()])("answers any text with a length or its own error", (text) => {
    try {
      expect(parseLength(text)).toBeGreaterThanOrEqual(0);
    } catch (error) {
      expect(error).toBeInstanceOf(GeometryError);
    }
  });

  test.prop([fc.integer({ min: 0, max: 999_999 })])("reads what is written", (thousandths) => {
    const millimetres = thousandths / 1000;
    expectClose(parseLength(`${millimetres.toFixed(4)} mm`), millimetres, 1e-9);
    expectClose(parseLength(`${millimetres.toFixed(4).replace(".", ",")} mm`), millimetres, 1e-9);
  });

  it("is quick on long nonsense", () => {
    const text = `${"1 ".repeat(50_000)}mm`;
    expect(() => parseLength(text)).toThrow(GeometryError);
  });
});
