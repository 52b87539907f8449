import { test } from "@fast-check/vitest";
import { fitPolynomial, highestPeak, polynomialAt } from "../../../src/geometry/internal.js";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const nodes = [0, 1, 2, 3, 4, 5, 6, 7, 8];

describe("highestPeak", () => {
  it("finds the peak of a cubic, not its far end", () => {
    // x³ − 15x² + 63x has slope 0 at 3 and 7: the first is the peak.
    const cubic = fitPolynomial(
      nodes,
      nodes.map((x) => x ** 3 - 15 * x ** 2 + 63 * x),
      3,
    );
    expectClose(highestPeak(cubic, 0, 10), 3, 1e-9);
    expect(polynomialAt(cubic, 10)).toBeGreaterThan(polynomialAt(cubic, 3));
  });

  it("takes the higher of two peaks", () => {
    const twoPeaks = (x: number): number => -((x - 1) ** 2) * (x - 5) ** 2 + x / 10;
    const fit = fitPolynomial(nodes, nodes.map(twoPeaks), 4);
    const peak = highestPeak(fit, 0, 6) ?? Number.NaN;
    expect(Math.abs(peak - 5)).toBeLessThan(0.1);
    expectClose(polynomialAt(fit, peak, 1), 0, 1e-9);
  });

  it.each([
    ["rises throughout", (x: number) => x ** 3 + x],
    ["falls throughout", (x: number) => -x],
    ["sags", (x: number) => (x - 4) ** 2],
    ["is level", () => 3],
  ])("has no answer where the curve %s", (_, of) => {
    expect(highestPeak(fitPolynomial(nodes, nodes.map(of), 3), 0, 8)).toBeUndefined();
  });

  test.prop([anyBetween(0.5, 7.5), anyBetween(0.01, 100)])(
    "finds the top of any parabola",
    (top, bend) => {
      const fit = fitPolynomial(
        nodes,
        nodes.map((x) => -bend * (x - top) ** 2),
        5,
      );
      expectClose(highestPeak(fit, 0, 8), top, 1e-7);
    },
  );
});
