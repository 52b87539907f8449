import { expect, it } from "vitest";
import { BISQUARE_CUT } from "../../../src/geometry/fits/bisquare.js";

/** The expectation of an even function of a normal value, as far out as the cut. */
function expected(of: (value: number) => number): number {
  const steps = 4000;
  const width = BISQUARE_CUT / steps;
  const sum = Array.from({ length: steps }, (_, step) => {
    const value = (step + 0.5) * width;
    return of(value) * Math.exp((-value * value) / 2);
  }).reduce((total, part) => total + part, 0);
  return (2 * width * sum) / Math.sqrt(2 * Math.PI);
}

it("BISQUARE_CUT gives 95 % of the efficiency of least squares on normal errors", () => {
  // The asymptotic variance of an M-estimate of location is E[ψ²] / E[ψ′]², that of the mean 1.
  const share = (value: number): number => (value / BISQUARE_CUT) ** 2;
  const slope = expected((value) => (1 - share(value)) * (1 - 5 * share(value)));
  const square = expected((value) => (value * (1 - share(value)) ** 2) ** 2);
  expect(slope ** 2 / square).toBeCloseTo(0.95, 4);
});
