import { fc, test } from "@fast-check/vitest";
import { mm, readCaliper, readRuler } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

describe("readRuler", () => {
  it("is uncertain by graduation/(2√3) (JCGM 100:2008, 4.3.7)", () => {
    expectClose(readRuler(mm(29.5)), { value: 29.5, u: 0.5 / (2 * Math.sqrt(3)) }, 1e-12);
    expectClose(readRuler(mm(29.5), { graduation: mm(1) }).u, 1 / (2 * Math.sqrt(3)), 1e-12);
  });

  it("reads twice where the ruler's zero does not lie at the beginning", () => {
    expectClose(
      readRuler(mm(39.5), { zero: mm(10) }),
      { value: 29.5, u: (0.5 * Math.SQRT2) / (2 * Math.sqrt(3)) },
      1e-12,
    );
  });

  it("does not know where in its pencil line an end lies", () => {
    const { u } = readRuler(mm(29.5), { pencil: mm(0.7) });
    expectClose(u ** 2, (0.5 ** 2 + 2 * 0.7 ** 2) / 12, 1e-12);
  });

  test.prop([
    fc.double({ min: 0, max: 150, noNaN: true }),
    fc.double({ min: 0, max: 150, noNaN: true }),
  ])("does not care where on the ruler a length was read", (length, zero) => {
    const { value } = readRuler(mm(zero + length), { zero: mm(zero) });
    expectClose(value, length, 1e-9);
  });

  it.each([
    ["NaN", Number.NaN, {}, "not-finite"],
    ["a reading below its zero", 5, { zero: mm(10) }, "out-of-range"],
    ["no graduation", 5, { graduation: mm(0) }, "out-of-range"],
    ["a negative pencil", 5, { pencil: mm(-1) }, "out-of-range"],
    ["an infinite pencil", 5, { pencil: mm(Number.POSITIVE_INFINITY) }, "out-of-range"],
  ])("refuses %s", (_, reading, options, code) => {
    expect(refusal(() => readRuler(mm(reading), options)).code).toBe(code);
  });
});

describe("readCaliper", () => {
  it("takes off what the closed caliper reads, below zero too", () => {
    expectClose(
      readCaliper(mm(7.6), { zero: mm(-0.1) }),
      { value: 7.7, u: (0.1 * Math.SQRT2) / (2 * Math.sqrt(3)) },
      1e-12,
    );
    expectClose(readCaliper(mm(7.6)).u, 0.1 / (2 * Math.sqrt(3)), 1e-12);
  });
});
